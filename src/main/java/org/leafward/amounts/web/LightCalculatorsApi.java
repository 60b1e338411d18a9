package org.leafward.amounts.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.cover.CoverTonight;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.amounts.light.RampCalendar;
import org.leafward.amounts.light.RampDay;
import org.leafward.measure.Explanation;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** The same calculators by API. */
@RestController
@Tag(name = "Calculators", description = "Amounts from figures that are given; nothing is stored")
class LightCalculatorsApi {

	/** A ramp; light in mol/m² of photons a day under a clear sky, one decimal. */
	record LightView(String words, double presentLight, boolean lightAlready, boolean complete, LocalDate firstDay,
			LocalDate readyOn, List<LightDay> days, Explanation explanation) {
	}

	/** A day of the ramp; times by the clock of the place. */
	record LightDay(int day, LocalDate date, int step, boolean held, String words, double aim, double siteLight,
			int hoursOutside, String place, @Nullable String from, @Nullable String sunUntil, boolean nightOut) {

		static LightDay of(RampCalendar.Entry day) {
			RampDay step = day.step();
			return new LightDay(day.number(), step.date(), step.step(), day.held(), day.words(), tenths(day.moles()),
					tenths(step.siteMoles()), day.held() ? 0 : step.hoursOutside(),
					day.held() ? "inside" : Calculators.code(step.exposure()), day.held() ? null : clock(step.from()),
					day.held() ? null : clock(step.until()), !day.held() && step.nightOut());
		}

	}

	/** A night; temperatures in °C, one decimal. */
	record CoverView(String words, String verdict, @Nullable String cover, double plantCelsius, double coveredCelsius,
			Explanation explanation) {
	}

	@Operation(summary = "The days of hardening a plant off, from where it stands to where it will grow")
	@GetMapping("/api/calculators/light")
	LightView light(@ParameterObject LightRequest asked) {
		LightAnswer answer = asked.answer();
		RampCalendar calendar = answer.calendar();
		HardeningRamp ramp = calendar.ramp();
		return new LightView(answer.lead() + " " + answer.change(), tenths(ramp.basis().presentMoles()),
				ramp.basis().lightAlready(), calendar.complete(), ramp.firstDay(), calendar.ready(),
				calendar.entries().stream().map(LightDay::of).toList(), answer.explanation());
	}

	@Operation(summary = "Whether a plant needs a cover tonight, and which")
	@GetMapping("/api/calculators/cover")
	CoverView cover(@ParameterObject CoverRequest asked) {
		CoverTonight night = asked.answer();
		return new CoverView(night.amount().words(), Calculators.code(night.verdict()),
				(night.cover() != null) ? Calculators.code(night.cover()) : null, tenths(night.plantCelsius()),
				tenths(night.coveredCelsius()), night.amount().explanation());
	}

	private static @Nullable String clock(@Nullable LocalTime time) {
		return (time != null) ? time.toString() : null;
	}

	private static double tenths(double value) {
		return Math.round(value * 10) / 10.0;
	}

}
