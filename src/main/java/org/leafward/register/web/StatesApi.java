package org.leafward.register.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.WeatherState;
import org.leafward.climate.WeatherStates;
import org.leafward.measure.Explanation;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** States of the weather at a site by API. */
@RestController
@Tag(name = "Weather states", description = "What the weather is up to at a site, as far as care waits for it")
class StatesApi {

	private final Register register;

	private final WeatherStates states;

	private final Clock clock;

	StatesApi(Register register, WeatherStates states, Clock clock) {
		this.register = register;
		this.states = states;
		this.clock = clock;
	}

	/**
	 * One state.
	 *
	 * @param state for example frost-ahead
	 * @param holds null when its figures are not known
	 * @param explanation the figures and the thresholds
	 */
	record StateAnswer(String state, @Nullable Boolean holds, Explanation explanation) {

		static StateAnswer of(WeatherState state) {
			return new StateAnswer(state.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'), state.holds(),
					state.explanation());
		}

	}

	@Operation(summary = "Which states of the weather hold today that care waits for or is put off by")
	@GetMapping("/api/v1/sites/{id}/states")
	List<StateAnswer> states(@PathVariable UUID id) {
		Site site = this.register.require(new SiteId(id));
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), site.zone());
		return this.states.at(site.point(), today).stream().map(StateAnswer::of).toList();
	}

}
