package org.leafward.regions.web;

import org.leafward.measure.NotThere;
import org.leafward.regions.RegionMap;
import org.leafward.regions.Regions;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

import io.swagger.v3.oas.annotations.Hidden;
import java.time.Duration;

/** The map of the counties as a picture, for pages and for picking a place on it. */
@RestController
@Hidden
class MapPicture {

	private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml;charset=utf-8");

	private final Regions regions;

	private final MapStyle style;

	MapPicture(Regions regions, MapStyle style) {
		this.regions = regions;
		this.style = style;
	}

	@GetMapping("/regions/map.svg")
	ResponseEntity<String> map(@RequestParam(defaultValue = "560") int width) {
		RegionMap map = this.regions.map(width).orElseThrow(() -> new NotThere("This server has no map of counties."));
		return ResponseEntity.ok()
			.contentType(SVG)
			.cacheControl(CacheControl.maxAge(Duration.ofHours(1)).cachePublic())
			.header("Content-Security-Policy", "default-src 'none'; style-src " + this.style.source())
			.body(map.document(this.style.rules()));
	}

}
