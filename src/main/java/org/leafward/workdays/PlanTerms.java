package org.leafward.workdays;

import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;

/**
 * What a group asks of each plan.
 *
 * @param notice how many days it takes to call people, 0 to 60: nothing sooner is
 * proposed
 * @param fewTools tools that not every team can have at the same time, with how many
 * teams can, 0 to 50; at most {@value #MOST_TOOLS}
 */
public record PlanTerms(int notice, Map<String, Integer> fewTools) {

	/** Three days, and everything is in everybody's shed. */
	public static final PlanTerms USUAL = new PlanTerms(3, Map.of());

	/** So many tools can be few. */
	public static final int MOST_TOOLS = 12;

	private static final int LONGEST_NOTICE = 60;

	private static final int MOST_OF_ONE = 50;

	private static final int LONGEST_NAME = 40;

	public PlanTerms {
		Findings all = new Findings();
		int days = notice;
		Map<String, Integer> few = fewTools;
		all.check(() -> {
			if (days < 0 || days > LONGEST_NOTICE) {
				throw new BadInput("%d days are outside 0 to %d".formatted(days, LONGEST_NOTICE), "notice",
						"say how many days it takes to call people");
			}
		});
		all.check(() -> {
			if (few.size() > MOST_TOOLS) {
				throw new BadInput("%d tools are more than %d".formatted(few.size(), MOST_TOOLS), "fewTools",
						"name those that are needed most");
			}
			few.forEach(PlanTerms::check);
		});
		all.end();
		Map<String, Integer> stripped = new HashMap<>();
		fewTools.forEach((tool, teams) -> stripped.put(tool.strip(), teams));
		fewTools = Map.copyOf(stripped);
	}

	private static void check(String tool, int teams) {
		GroupDesk.length("fewTools", GroupDesk.line("fewTools", "a tool", Given.text("fewTools", tool)), LONGEST_NAME);
		if (teams < 0 || teams > MOST_OF_ONE) {
			throw new BadInput("%d of '%s' are outside 0 to %d".formatted(teams, tool, MOST_OF_ONE), "fewTools",
					"leave out what there is enough of");
		}
	}

	/**
	 * Which of its few tools a task needs.
	 * @param tools what its people bring
	 * @return some of the names in {@link #fewTools}
	 */
	public Set<String> few(Collection<String> tools) {
		Set<String> needed = tools.stream().map(PlanTerms::plain).collect(Collectors.toSet());
		return this.fewTools.keySet()
			.stream()
			.filter((tool) -> needed.contains(plain(tool)))
			.collect(Collectors.toSet());
	}

	/** Rakes are a rake. */
	static String plain(String tool) {
		String low = tool.strip().toLowerCase(Locale.ROOT);
		return (low.length() > 3 && low.endsWith("s") && !low.endsWith("ss")) ? low.substring(0, low.length() - 1)
				: low;
	}

}
