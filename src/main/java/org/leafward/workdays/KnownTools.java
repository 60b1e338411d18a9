package org.leafward.workdays;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.leafward.care.RulePacks;
import org.leafward.measure.BadInput;
import org.leafward.workdays.effort.EffortTable;
import org.springframework.stereotype.Component;

/** Tools by the names that tasks ask for. */
@Component
public class KnownTools {

	private final EffortTable table;

	private final RulePacks packs;

	KnownTools(EffortTable table, RulePacks packs) {
		this.table = table;
		this.packs = packs;
	}

	/**
	 * All that some rule or kind of work asks for, without what has a stand-in.
	 * @return by name, each once: rakes are a rake
	 */
	public List<String> names() {
		SortedSet<String> names = new TreeSet<>(this.table.tools());
		this.packs.all()
			.stream()
			.flatMap((pack) -> pack.rules().stream())
			.flatMap((rule) -> rule.effort().tools().stream())
			.filter((tool) -> !tool.contains(" or "))
			.forEach(names::add);
		Map<String, String> once = new LinkedHashMap<>();
		names.forEach((name) -> once.putIfAbsent(PlanTerms.plain(name), name));
		return List.copyOf(once.values());
	}

	/**
	 * Refuses tools that no task asks for, since a plan would never heed them.
	 * @param tools names as they were given
	 * @throws BadInput for the first that isn't known
	 */
	public void check(Collection<String> tools) {
		List<String> known = names().stream().map(PlanTerms::plain).toList();
		for (String tool : tools) {
			if (!known.contains(PlanTerms.plain(tool))) {
				throw new BadInput("no task asks for '%s'".formatted(tool), "fewTools", "choose a tool from the list");
			}
		}
	}

}
