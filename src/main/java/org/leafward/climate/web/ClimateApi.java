package org.leafward.climate.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.LoadReport;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.Observations;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.StationPage;
import org.leafward.climate.Stations;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.util.UriComponentsBuilder;

/** Weather stations over HTTP. */
@RestController
@RequestMapping(path = "/api/v1/stations")
class ClimateApi {

	private final Stations stations;

	private final Observations observations;

	private final LocalClimate climate;

	ClimateApi(Stations stations, Observations observations, LocalClimate climate) {
		this.stations = stations;
		this.observations = observations;
		this.climate = climate;
	}

	@PostMapping
	ResponseEntity<StationForm> register(@RequestBody StationForm form) {
		Station station = form.station();
		boolean fresh = this.stations.register(station);
		return (fresh
				? ResponseEntity
					.created(UriComponentsBuilder.fromPath("/api/v1/stations/{id}").build(station.id().value()))
				: ResponseEntity.ok())
			.body(StationForm.of(station));
	}

	@GetMapping
	Listing list(@RequestParam(defaultValue = "0") int page, @RequestParam(defaultValue = "50") int size) {
		StationPage found = this.stations.page(page, size);
		return new Listing(found.stations().stream().map(StationForm::of).toList(), found.page(), found.size(),
				found.total());
	}

	@GetMapping("/{id}")
	StationForm one(@PathVariable String id) {
		StationId station = new StationId(id);
		return this.stations.find(station)
			.map(StationForm::of)
			.orElseThrow(() -> new NotThere("station " + station.value()));
	}

	/** Takes the file as the raw body, whatever its content type says. */
	@PutMapping(path = "/{id}/observations")
	LoadReport load(@PathVariable String id, HttpServletRequest request) throws IOException {
		refuseForms(request);
		return this.observations.load(new StationId(id), request.getInputStream(), "request body");
	}

	/** The body of a form is eaten by the form filter before it gets here. */
	static void refuseForms(HttpServletRequest request) {
		String type = request.getContentType();
		if (type != null && type.startsWith(MediaType.APPLICATION_FORM_URLENCODED_VALUE)) {
			throw new BadInput("the content type says that the body is a form", "Content-Type",
					"send the file as application/octet-stream");
		}
	}

	@GetMapping("/{id}/freeze-dates")
	FreezeDatesView freezeDates(@PathVariable String id, @RequestParam(required = false) @Nullable Integer from,
			@RequestParam(required = false) @Nullable Integer to,
			@RequestParam(defaultValue = "32F") String threshold) {
		return FreezeDatesView
			.of(this.climate.freezeDates(new StationId(id), from, to, TemperatureThreshold.parse(threshold)));
	}

	/** A page of stations. */
	record Listing(List<StationForm> stations, int page, int size, long total) {
	}

}
