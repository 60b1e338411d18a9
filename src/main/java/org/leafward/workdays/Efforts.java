package org.leafward.workdays;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.RulePacks;
import org.leafward.register.Planting;
import org.leafward.workdays.effort.EffortTable;
import org.leafward.workdays.effort.TaskEffort;
import org.springframework.stereotype.Component;

/** What a task asks of a group: minutes, tools, and skills that not everybody has. */
@Component
class Efforts {

	private static final String ARBORIST = "arborist";

	/**
	 * What nobody does without training or a licence. The other skills of rules (pruning,
	 * lifting, ladders, mowers) are shown to people on the day by those who lead.
	 */
	private static final Set<String> GATED = Set.of(ARBORIST, Skill.SAW.code(), Skill.PESTICIDE.code(),
			Skill.FIRST_AID.code(), Skill.DRIVING.code());

	private final EffortTable table;

	private final RulePacks packs;

	Efforts(EffortTable table, RulePacks packs) {
		this.table = table;
		this.packs = packs;
	}

	/**
	 * What a task asks.
	 *
	 * @param minutes person-minutes
	 * @param skills codes of the skills that are needed
	 * @param tools what to bring
	 */
	record Ask(int minutes, Set<String> skills, List<String> tools) {

		/** The skills in words. */
		List<String> skillWords() {
			return this.skills.stream().sorted().map(Efforts::words).toList();
		}

	}

	Ask of(CareTask task, @Nullable Planting planting) {
		TaskEffort effort = this.table.of(this.packs.find(task.rule()).orElse(null), task.work(),
				(planting != null) ? planting.count() : 1, (planting != null) ? planting.size().squareMetres() : null);
		return new Ask(effort.personMinutes(),
				effort.skills().stream().filter(GATED::contains).collect(Collectors.toSet()), effort.tools());
	}

	private static String words(String code) {
		for (Skill skill : Skill.values()) {
			if (skill.code().equals(code)) {
				return skill.words();
			}
		}
		return "an arborist";
	}

}
