package org.leafward.regions;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A GeoJSON feature collection as written. Components are named like the members that the
 * schema region-1.json describes; others are left alone (RFC 7946, section 6.1).
 */
record RegionFile(String title, @Nullable Boolean invented, List<Feature> features) {

	/** A county or a town as written. */
	record Feature(Properties properties, Geometry geometry) {
	}

	/** What is known of it, as written. */
	record Properties(String name, @Nullable String region, @Nullable String zone, @Nullable Double elevationMetres) {
	}

	/** Its shape as written. */
	record Geometry(String type, List<Object> coordinates) {
	}

}
