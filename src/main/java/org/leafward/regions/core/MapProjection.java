package org.leafward.regions.core;

import java.util.Optional;

/**
 * Lays a part of the earth on paper and back: the equidistant cylindrical projection, x
 * growing with longitude times the cosine of the middle latitude and y with latitude
 * (Snyder 1987, Map Projections: A Working Manual, US Geological Survey Professional
 * Paper 1395, section 12, from memory). North is up, and a county keeps its form.
 */
public final class MapProjection {

	/** Kilometres of a degree of latitude on a sphere of the mean radius 6371.0088 km. */
	private static final double KM_PER_DEGREE = Math.toRadians(6371.0088);

	/** Nothing is drawn smaller than this, degrees. */
	private static final double LEAST = 0.001;

	private final Extent extent;

	private final double width;

	private final double height;

	private final double margin;

	private final double shrink;

	private final double perDegree;

	/**
	 * Creates a projection.
	 * @param extent what is to be seen
	 * @param width width of the paper, px, above twice the margin
	 * @param margin free on each side, px, 0 or more
	 */
	public MapProjection(Extent extent, double width, double margin) {
		if (!(width > 2 * margin) || !(margin >= 0)) {
			throw new IllegalArgumentException("%s px leave no room beside a margin of %s".formatted(width, margin));
		}
		this.extent = extent;
		this.width = width;
		this.margin = margin;
		this.shrink = Math.cos(Math.toRadians((extent.south() + extent.north()) / 2));
		double wide = Math.max(LEAST, extent.east() - extent.west()) * this.shrink;
		double high = Math.max(LEAST, extent.north() - extent.south());
		// A region like a tower is drawn at most twice as high as wide.
		this.perDegree = Math.min((width - 2 * margin) / wide, (2 * width - 2 * margin) / high);
		this.height = Math.ceil(high * this.perDegree + 2 * margin);
	}

	/**
	 * Height of the paper.
	 * @return whole px
	 */
	public double height() {
		return this.height;
	}

	/**
	 * Where a longitude lies.
	 * @param longitude degrees east
	 * @return px from the left
	 */
	public double x(double longitude) {
		return this.width / 2
				+ (longitude - (this.extent.west() + this.extent.east()) / 2) * this.shrink * this.perDegree;
	}

	/**
	 * Where a latitude lies.
	 * @param latitude degrees north
	 * @return px from the top
	 */
	public double y(double latitude) {
		return this.margin + (this.extent.north() - latitude) * this.perDegree;
	}

	/**
	 * What lies at a point of the paper.
	 * @param x px from the left
	 * @param y px from the top
	 * @return empty off the paper, and where the paper is larger than the earth
	 */
	public Optional<Position> at(double x, double y) {
		double longitude = (x - this.width / 2) / (this.shrink * this.perDegree)
				+ (this.extent.west() + this.extent.east()) / 2;
		double latitude = this.extent.north() - (y - this.margin) / this.perDegree;
		boolean onPaper = x >= 0 && x <= this.width && y >= 0 && y <= this.height;
		return (onPaper && Math.abs(longitude) <= 180 && Math.abs(latitude) <= 90)
				? Optional.of(new Position(longitude, latitude)) : Optional.empty();
	}

	/**
	 * The scale of the map.
	 * @return px of a kilometre
	 */
	public double pixelsPerKilometre() {
		return this.perDegree / KM_PER_DEGREE;
	}

}
