package org.leafward.workdays;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.leafward.care.pack.ConfiguredPacks;
import org.leafward.care.pack.SpokenPacks;
import org.leafward.language.Language;
import org.leafward.language.Phrasebook;
import org.leafward.workdays.CrewCases.Past;
import org.leafward.workdays.CrewCases.Shape;
import org.leafward.workdays.core.board.Board;
import org.leafward.workdays.core.board.GreedyStart;
import org.leafward.workdays.core.board.PlanReport;
import org.leafward.workdays.core.board.Standing;
import org.leafward.workdays.core.plan.CrewPlan;
import org.leafward.workdays.core.plan.Placed;
import org.leafward.workdays.core.plan.Unplaced;

import static org.assertj.core.api.Assertions.assertThat;

/** Plans say in Spanish, too, why each task stands where it stands, or nowhere. */
class SpokenReasonsTests {

	/** What each of the reasons that a plan can give has and no other. */
	private static final List<String> KINDS = List.of("the only day on which", "for one other task as well",
			"other tasks as well", "and has the time", "Pinned to", "It stays where it was", "It stood on",
			"It is pinned to", "No candidate date lies", "The nearest is", "A hold-off covers", "was ruled out for it",
			"The site is closed", "No team can go out", "Nobody who is expected", "Divide it",
			"but the way there or a further team", "days may be called", "too little other work to call",
			"The days in its window are full", "the freest team");

	/** Words of the invented problems that real ones don't have, and some of those. */
	private static final Map<String, String> REAL = Map.of("the buds are open", "Prune before growth starts",
			"pesticide licence", "pesticide-licence", ": saw.", ": chain-saw.");

	private final Phrasebook spanish = SpokenPacks.books(ConfiguredPacks.read()).ofPages(Language.SPANISH);

	private static List<String> reasons(Shape shape) {
		Standing standing = new Standing(new Board(CrewCases.of(shape)));
		GreedyStart.fill(standing);
		CrewPlan plan = PlanReport.of(standing);
		List<String> all = new ArrayList<>(plan.unplaced().stream().map(Unplaced::why).toList());
		plan.workdays()
			.stream()
			.flatMap((day) -> day.teams().stream())
			.flatMap((team) -> team.stops().stream())
			.flatMap((stop) -> stop.tasks().stream())
			.map(Placed::why)
			.forEach(all::add);
		return all;
	}

	@Test
	void eachCanBeSaid() {
		Map<String, String> unsaid = new TreeMap<>();
		List<String> kinds = new ArrayList<>(KINDS);
		for (int seed = 0; seed < 60; seed++) {
			for (String why : reasons(new Shape("spoken", 1 + seed % 7, 20 + 2 * seed, 4 + seed % 9, 3 + seed % 20,
					15 + seed, 1 + seed % 3, seed, Past.CHANCE))) {
				String real = why;
				for (Map.Entry<String, String> one : REAL.entrySet()) {
					real = real.replace(one.getKey(), one.getValue());
				}
				String asked = real;
				kinds.removeIf(asked::contains);
				Optional<String> said = this.spanish.find(asked);
				if (said.isEmpty() || said.get().contains(" which ") || said.get().contains(" to ")) {
					unsaid.put(asked, said.orElse("nothing"));
				}
			}
		}
		assertThat(unsaid).isEmpty();
		assertThat(kinds).as("reasons that no problem here had").isEmpty();
	}

}
