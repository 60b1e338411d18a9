package org.leafward.climate.web;

import jakarta.servlet.http.HttpServletRequest;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.Forecasts;
import org.leafward.climate.LoadReport;
import org.leafward.climate.Observations;
import org.leafward.climate.StationId;
import org.leafward.climate.fetch.FetchOutcome;
import org.leafward.climate.fetch.Fetcher;
import org.leafward.climate.fetch.SourceStatus;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The season so far, the forecast, and where both come from, over HTTP. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Season so far", description = "Observed days, forecasts, and where both come from")
class CurrentWeatherApi {

	/** A forecast of 60 days has about 4 kB. */
	private static final int MOST_BYTES = 64 * 1024;

	private final Observations observations;

	private final Forecasts forecasts;

	private final Fetcher fetcher;

	private final Clock clock;

	CurrentWeatherApi(Observations observations, Forecasts forecasts, Fetcher fetcher, Clock clock) {
		this.observations = observations;
		this.forecasts = forecasts;
		this.fetcher = fetcher;
		this.clock = clock;
	}

	/** Adds days to the record; the same days twice change nothing. */
	@Operation(summary = "Add observed days to a record; again changes nothing")
	@PostMapping("/stations/{id}/observations")
	LoadReport append(@PathVariable String id, @RequestBody List<@Nullable DayForm> days) {
		StationId station = new StationId(id);
		return this.observations.load(station, DayForm.days(days, LocalDate.now(this.clock)));
	}

	/** Asks every source that is configured for the station, and waits for it. */
	@Operation(summary = "Ask the outside sources of a station now")
	@PostMapping("/stations/{id}/fetch")
	ResponseEntity<List<FetchOutcome>> fetch(@PathVariable String id) {
		List<FetchOutcome> outcomes = this.fetcher.now(id.toUpperCase(Locale.ROOT));
		boolean allFailed = outcomes.stream().allMatch((one) -> one.failure() != null);
		return ResponseEntity.status(allFailed ? HttpStatus.BAD_GATEWAY : HttpStatus.OK).body(outcomes);
	}

	/** Takes a forecast as plain CSV, whatever its content type says. */
	@Operation(summary = "Hand in a forecast as CSV")
	@PutMapping("/stations/{id}/forecast")
	ForecastView upload(@PathVariable String id, HttpServletRequest request) throws IOException {
		StationId station = new StationId(id);
		byte[] bytes = request.getInputStream().readNBytes(MOST_BYTES + 1);
		if (bytes.length > MOST_BYTES) {
			throw new BadInput("the forecast is larger than %d bytes".formatted(MOST_BYTES), "body",
					"give one line a day");
		}
		return ForecastView.of(this.forecasts.upload(station, new String(bytes, StandardCharsets.UTF_8)));
	}

	@Operation(summary = "The last good forecast of a station, and how old it is")
	@GetMapping("/stations/{id}/forecast")
	ForecastView forecast(@PathVariable String id) {
		StationId station = new StationId(id);
		return this.forecasts.of(station)
			.map(ForecastView::of)
			.orElseThrow(() -> new NotThere("forecast of station " + station.value()));
	}

	@Operation(summary = "Outside sources, when each last answered, and what failed")
	@GetMapping("/sources")
	List<SourceStatus> sources() {
		return this.fetcher.status();
	}

}
