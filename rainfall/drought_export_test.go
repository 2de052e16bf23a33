package rainfall

// ShapeOfRatio is tested against the exact relation that it approximates.
var ShapeOfRatio = shapeOfRatio
