/** An argument is impossible: a negative area, a share above one, no number. */
export class DomainError extends Error {
  constructor(message, details) {
    super(message);
    this.name = "DomainError";
    Object.assign(this, details);
  }
}

/** An argument lies outside what the source covers. The value is still given. */
export class RangeWarning extends Error {
  constructor(message, details) {
    super(message);
    this.name = "RangeWarning";
    Object.assign(this, details);
  }
}

/** Rows of arrays are impossible and give NaN. */
export class DomainWarning extends RangeWarning {
  constructor(message, details) {
    super(message, details);
    this.name = "DomainWarning";
  }
}

/** An argument or a document is wrong: the path says where. */
export class DocumentError extends Error {
  constructor(message, { path = "", value, problem = "", allowed = "" } = {}) {
    super(message);
    this.name = "DocumentError";
    Object.assign(this, { path, value, problem, allowed });
  }
}

/** Says what is wrong with an argument and what would be right. */
export function refuse(path, problem, allowed, value) {
  const words = value === undefined ? `${path} ${problem}` : `${path}: ${show(value)} ${problem}`;
  throw new DocumentError(`${words}; ${allowed}`, { path, value, problem, allowed });
}

function show(value) {
  const text = typeof value === "string" ? JSON.stringify(value) : String(value);
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}
