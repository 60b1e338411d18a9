package org.leafward.regions;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.regions.core.Extent;
import org.leafward.regions.core.MapProjection;

/**
 * A map of counties.
 *
 * @param counties what it shows, at least one
 * @param towns for finding one's way
 * @param width px, {@value #LEAST} to {@value #MOST}
 * @param chosen a place to mark
 * @param dotted codes of counties that are dotted, as what is watched for is
 * @param figures a few words below the names of counties, by their codes
 */
public record RegionMap(List<County> counties, List<Town> towns, int width, Optional<GeoPoint> chosen,
		Set<String> dotted, Map<String, String> figures) {

	/** Width of the narrowest map, px. */
	public static final int LEAST = 200;

	/** Width of the widest map, px. */
	public static final int MOST = 1600;

	private static final double MARGIN = 6;

	/** Height of the strip below with the measure, px. */
	private static final int MEASURE = 22;

	/**
	 * Checks the width.
	 * @throws BadInput when it is out of its bounds
	 */
	public RegionMap {
		if (width < LEAST || width > MOST) {
			throw new BadInput("width %d is outside %d to %d".formatted(width, LEAST, MOST), "width",
					"give the width of the map in pixels");
		}
		counties = List.copyOf(counties);
		towns = List.copyOf(towns);
		dotted = Set.copyOf(dotted);
		figures = Map.copyOf(figures);
	}

	/**
	 * A map on which no county is dotted or has figures.
	 * @param counties what it shows, at least one
	 * @param towns for finding one's way
	 * @param width px
	 * @param chosen a place to mark
	 */
	public RegionMap(List<County> counties, List<Town> towns, int width, Optional<GeoPoint> chosen) {
		this(counties, towns, width, chosen, Set.of(), Map.of());
	}

	/**
	 * The same map with a place marked.
	 * @param place the place; one off the map is not drawn
	 * @return the map
	 */
	public RegionMap marking(GeoPoint place) {
		return new RegionMap(this.counties, this.towns, this.width, Optional.of(place), this.dotted, this.figures);
	}

	/**
	 * The same map with some counties dotted, which the words of the picture name.
	 * @param codes codes of the counties
	 * @return the map
	 */
	public RegionMap dotting(Set<String> codes) {
		return new RegionMap(this.counties, this.towns, this.width, this.chosen, codes, this.figures);
	}

	/**
	 * The same map with a few words below the names of counties.
	 * @param words words by the codes of counties
	 * @return the map, without towns, which would stand in their way
	 */
	public RegionMap telling(Map<String, String> words) {
		return new RegionMap(this.counties, List.of(), this.width, this.chosen, this.dotted, words);
	}

	/**
	 * How the map lies on its paper.
	 * @return of this width
	 */
	public MapProjection projection() {
		return new MapProjection(
				this.counties.stream().map((one) -> one.area().extent()).reduce(Extent::with).orElseThrow(), this.width,
				MARGIN);
	}

	/**
	 * Height of the map.
	 * @return px
	 */
	public int height() {
		return (int) projection().height() + MEASURE;
	}

	/**
	 * What somebody pointed at.
	 * @param x px from the left
	 * @param y px from the top
	 * @return at sea level; empty off the map, and in its very corner, which is what a
	 * browser sends for a press of a key
	 */
	public Optional<GeoPoint> at(int x, int y) {
		return (x == 0 && y == 0) ? Optional.empty()
				: projection().at(x, y).map((found) -> new GeoPoint(found.latitude(), found.longitude(), 0));
	}

	/**
	 * The map for a page.
	 * @return inline SVG
	 */
	public String svg() {
		return new RegionMapDrawing(this).svg("");
	}

	/**
	 * The map as a picture of its own.
	 * @param style rules for its classes
	 * @return an SVG document
	 */
	public String document(String style) {
		return new RegionMapDrawing(this).svg(style);
	}

}
