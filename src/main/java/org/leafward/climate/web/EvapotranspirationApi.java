package org.leafward.climate.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.LocalWeather;
import org.leafward.climate.StationId;
import org.leafward.measure.Given;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Evapotranspiration over HTTP. */
@RestController
@Tag(name = "Stations", description = "Weather stations and their daily records")
class EvapotranspirationApi {

	private final LocalWeather weather;

	EvapotranspirationApi(LocalWeather weather) {
		this.weather = weather;
	}

	/** At most three years at a time, both days included. */
	@Operation(summary = "Reference evapotranspiration of each day, and what it was made from")
	@GetMapping("/api/v1/stations/{id}/evapotranspiration")
	EvapotranspirationView ofStation(@PathVariable String id, @RequestParam(required = false) @Nullable String from,
			@RequestParam(required = false) @Nullable String to) {
		StationId station = new StationId(id);
		return EvapotranspirationView.of(station,
				this.weather.ofStation(station, Given.date("from", from), Given.date("to", to)));
	}

}
