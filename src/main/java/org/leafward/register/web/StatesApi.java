package org.leafward.register.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.StateQuestion;
import org.leafward.climate.WeatherState;
import org.leafward.climate.WeatherStates;
import org.leafward.measure.BadInput;
import org.leafward.measure.Explanation;
import org.leafward.register.OpenSites;
import org.leafward.register.Site;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** States of the weather at a site by API. */
@RestController
@Tag(name = "Weather states", description = "What the weather is up to at a site, as far as care waits for it")
class StatesApi {

	private static final int MOST = 20;

	private final OpenSites sites;

	private final WeatherStates states;

	private final Clock clock;

	StatesApi(OpenSites sites, WeatherStates states, Clock clock) {
		this.sites = sites;
		this.states = states;
		this.clock = clock;
	}

	/**
	 * One state.
	 *
	 * @param state for example frost-ahead, or the question as it was asked
	 * @param question what it asks, for example forecast-min-at-most-32f
	 * @param holds null when its figures are not known
	 * @param explanation the figures and the thresholds
	 */
	record StateAnswer(String state, String question, @Nullable Boolean holds, Explanation explanation) {

		static StateAnswer of(WeatherState state) {
			return new StateAnswer(state.code(), state.question().code(), state.holds(), state.explanation());
		}

	}

	@Operation(summary = "Which states of the weather hold today that care waits for or is put off by",
			description = "Those that have a name, or those asked for, such as forecast-min-at-most-34f, dry-days-10d, "
					+ "new-snow-at-least-2in or drought-at-least-d2.")
	@GetMapping("/api/v1/sites/{id}/states")
	List<StateAnswer> states(@PathVariable UUID id, @RequestParam(required = false) @Nullable List<String> ask) {
		Site site = this.sites.own(id);
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), site.zone());
		if (ask != null && ask.size() > MOST) {
			throw new BadInput("%d states are asked at once".formatted(ask.size()), "ask",
					"ask for at most %d".formatted(MOST));
		}
		List<WeatherState> states = (ask == null) ? this.states.at(site.place(), today)
				: this.states.at(site.place(), today, ask.stream().map(StateQuestion::parse).toList());
		return states.stream().map(StateAnswer::of).toList();
	}

}
