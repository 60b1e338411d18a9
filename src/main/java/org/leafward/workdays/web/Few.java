package org.leafward.workdays.web;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.workdays.PlanTerms;

/**
 * A row of a form: a tool that is few.
 *
 * @param tool its name; empty in a row that isn't used
 * @param teams how many teams can have it at the same time, as it was written
 */
record Few(String tool, String teams) {

	private static final int ROOM = 2;

	/**
	 * What a form sends, one entry a row.
	 *
	 * @param tool names
	 * @param teams numbers
	 */
	record Fields(@Nullable List<String> tool, @Nullable List<String> teams) {

		/** The rows that are used. */
		List<Few> rows() {
			List<Few> rows = new ArrayList<>();
			for (int i = 0; this.tool != null && i < Math.min(this.tool.size(), PlanTerms.MOST_TOOLS + 1); i++) {
				if (!this.tool.get(i).isBlank()) {
					rows.add(new Few(this.tool.get(i),
							(this.teams != null && i < this.teams.size()) ? this.teams.get(i) : ""));
				}
			}
			return rows;
		}

	}

	/** The same rows and some to fill in. */
	static List<Few> withRoom(List<Few> rows) {
		List<Few> all = new ArrayList<>(rows);
		for (int i = 0; i < ROOM && all.size() < PlanTerms.MOST_TOOLS; i++) {
			all.add(new Few("", ""));
		}
		return all;
	}

}
