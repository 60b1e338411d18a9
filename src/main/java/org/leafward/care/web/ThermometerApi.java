package org.leafward.care.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.media.Schema.RequiredMode;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.PlacePreview;
import org.leafward.care.PlacePreviews;
import org.leafward.care.PreviewedChange;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.MinimumComparison;
import org.leafward.climate.MinimumReading;
import org.leafward.climate.Station;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Given;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** Somebody's own minimum thermometer against the estimate, by API. */
@RestController
@Tag(name = "Thermometer", description = "ThermometerRequest that shift a site's nights")
@RequestMapping("/api/v1/sites/{id}/thermometer")
class ThermometerApi {

	private final Mine mine;

	private final LocalClimate climate;

	private final Register register;

	private final PlacePreviews previews;

	private final Clock clock;

	ThermometerApi(Mine mine, LocalClimate climate, Register register, PlacePreviews previews, Clock clock) {
		this.mine = mine;
		this.climate = climate;
		this.register = register;
		this.previews = previews;
		this.clock = clock;
	}

	/** Unit of readings without their own. */
	enum Unit {

		CELSIUS, FAHRENHEIT

	}

	/**
	 * ThermometerRequest.
	 *
	 * @param readings a date and degrees on each line
	 * @param unit of lines without their own; Celsius when left out
	 */
	record ThermometerRequest(
			@Schema(requiredMode = RequiredMode.REQUIRED,
					example = "2026-11-03 -2.5\n2026-11-04 27 F") @Nullable String readings,
			@Schema(allowableValues = {
					"celsius", "fahrenheit" }) @Nullable String unit){
	}

	/**
	 * A night.
	 *
	 * @param day the day whose minimum it is
	 * @param own what the thermometer showed, °C
	 * @param estimated for open, level ground, °C; null when no station has that night
	 */
	record ReadNight(LocalDate day, double own, @Nullable Double estimated) {
	}

	/**
	 * A marker that hangs on nights.
	 *
	 * @param marker its code
	 * @param before its date as the site is now; null when there is none
	 * @param after its date then; null when there is none
	 */
	record MovedMarker(String marker, @Nullable LocalDate before, @Nullable LocalDate after) {
	}

	/**
	 * A task that would move, come or go.
	 *
	 * @param title what it is called
	 * @param plant what readers call the planting
	 * @param before its days now; null when it would be new
	 * @param after its days then; null when it would be withdrawn
	 */
	record MovedTask(String title, String plant, @Nullable DayWindow before, @Nullable DayWindow after) {

		static MovedTask of(PreviewedChange change) {
			return new MovedTask(change.title(), change.plant(), change.before(), change.after());
		}

	}

	/**
	 * The comparison.
	 *
	 * @param nights the readings with their estimates
	 * @param counted nights that have both
	 * @param meanCelsius mean of thermometer less estimate; null without any
	 * @param uncertaintyCelsius how far that may be off; null with fewer than two
	 * @param offsetCelsius as a site keeps it; null when it can't be kept
	 * @param few whether there are fewer nights than can be leaned on
	 * @param wide whether they scatter more than a garden's do
	 * @param stations names of the stations behind the estimate
	 * @param markers how season markers would move; empty without an offset
	 * @param tasks tasks that would get other days, the soonest first
	 * @param moreTasks how many more there are
	 */
	record ThermometerAnswer(List<ReadNight> nights, int counted, @Nullable Double meanCelsius,
			@Nullable Double uncertaintyCelsius, @Nullable Double offsetCelsius, boolean few, boolean wide,
			List<String> stations, List<MovedMarker> markers, List<MovedTask> tasks, int moreTasks) {

		static ThermometerAnswer of(MinimumComparison all, @Nullable PlacePreview preview) {
			return new ThermometerAnswer(
					all.nights().stream().map((one) -> new ReadNight(one.day(), one.own(), one.estimated())).toList(),
					all.counted(), all.mean(), all.uncertainty(), all.offset(), all.few(), all.wide(),
					all.stations().stream().map(Station::name).toList(),
					(preview == null) ? List.of()
							: preview.markers()
								.stream()
								.map((one) -> new MovedMarker(one.key().toString(), one.before(), one.after()))
								.toList(),
					(preview == null) ? List.of() : preview.moved().stream().map(MovedTask::of).toList(),
					(preview == null) ? 0 : preview.more());
		}

	}

	/**
	 * What a site's nights are shifted by.
	 *
	 * @param offsetCelsius °C; null when no thermometer is used
	 */
	record ThermometerUsed(@Nullable Double offsetCelsius) {
	}

	@Operation(
			summary = "Compare up to 120 readings with the estimate and see which dates would move; nothing is changed")
	@PostMapping("/compared")
	ThermometerAnswer compare(@PathVariable UUID id, @RequestBody ThermometerRequest request) {
		Site site = this.mine.site(id);
		MinimumComparison compared = compared(site, request);
		Double offset = compared.offset();
		return ThermometerAnswer.of(compared,
				(offset == null) ? null : this.previews.of(site.id(), site.microclimate().measuring(offset)));
	}

	@Operation(summary = "Shift the site's nights by these readings; its tasks have moved when this answers")
	@PutMapping
	ThermometerUsed use(@PathVariable UUID id, @RequestBody ThermometerRequest request) {
		Site site = this.mine.site(id);
		return use(site, ThermometerPages.offset(compared(site, request)));
	}

	@Operation(summary = "Forget the thermometer; dates go by how the site lies again")
	@DeleteMapping
	@ResponseStatus(HttpStatus.NO_CONTENT)
	void forget(@PathVariable UUID id) {
		use(this.mine.site(id), null);
	}

	private ThermometerUsed use(Site site, @Nullable Double offset) {
		Site changed = this.register.change(site.id(), (now) -> ThermometerPages.measuring(now, offset));
		return new ThermometerUsed(changed.microclimate().measuredOffsetCelsius());
	}

	private MinimumComparison compared(Site site, ThermometerRequest request) {
		boolean fahrenheit = request.unit() != null && !request.unit().isBlank()
				&& Given.word("unit", request.unit(), Unit.class) == Unit.FAHRENHEIT;
		if (request.readings() == null || request.readings().isBlank()) {
			throw new BadInput("no readings are given", "readings", "write a date and degrees on each line");
		}
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), site.zone());
		return this.climate.compare(site.point(),
				MinimumReading.list(Objects.requireNonNull(request.readings()), fahrenheit, today));
	}

}
