package org.leafward.workdays.effort;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.rule.Effort;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.Work;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;
import org.leafward.knowledge.Reading;
import org.springframework.stereotype.Component;

/**
 * The effort of tasks. A rule that says how long it takes, who may do it and with what is
 * asked first; what it leaves open comes from the table of kinds of work.
 */
@Component
public class EffortTable {

	private static final String SCHEMA = "schema/effort-1.json";

	/** Plants alike go faster after these, by the factor below; our choice. */
	private static final int SLOW_PLANTS = 20;

	private static final double FASTER = 4;

	private static final EffortFile.Entry UNKNOWN = new EffortFile.Entry("", 15, 5, null, List.of(), List.of(),
			"a guess, as the kind of work isn't known");

	private final Map<Work, EffortFile.Entry> byWork = new EnumMap<>(Work.class);

	/**
	 * Reads the table.
	 * @param files finds the files
	 * @param reader reads them
	 * @throws BrokenKnowledge with every problem of every file
	 */
	public EffortTable(KnowledgeFiles files, KnowledgeReader reader) {
		List<Problem> problems = new ArrayList<>();
		for (KnowledgeFile file : files.of("workdays")) {
			Reading<EffortFile> reading = reader.read(file, SCHEMA, EffortFile.class);
			problems.addAll(reading.problems());
			EffortFile content = reading.value();
			for (int i = 0; content != null && i < content.works().size(); i++) {
				EffortFile.Entry entry = content.works().get(i);
				Work work = Work.valueOf(entry.work().toUpperCase(Locale.ROOT).replace('-', '_'));
				if (this.byWork.putIfAbsent(work, entry) != null) {
					problems.add(reading.places()
						.problem("/works/%d/work".formatted(i), "'%s' is there twice".formatted(entry.work()),
								"keep one of them"));
				}
			}
		}
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
	}

	/**
	 * The effort of a task.
	 * @param rule the rule it comes from; null when that isn't there any more
	 * @param work the kind of work; null when it isn't known
	 * @param plants number of plants, 1 or more; 1 for a site as a whole
	 * @param squareMetres area of the planting; null when nobody measured
	 * @return minutes, skills, tools and where they are from
	 */
	public TaskEffort of(@Nullable Rule rule, @Nullable Work work, int plants, @Nullable Double squareMetres) {
		EffortFile.Entry entry = (work != null) ? this.byWork.getOrDefault(work, UNKNOWN) : UNKNOWN;
		Effort told = (rule != null) ? rule.effort() : Effort.UNKNOWN;
		boolean byRule = told.minutes() > 0;
		double minutes = !byRule ? minutes(entry, plants, squareMetres)
				: (told.per() == Effort.Per.PLANT) ? told.minutes() * (double) slow(plants) : told.minutes();
		Set<String> skills = !told.skills().isEmpty() ? told.skills()
				: Set.copyOf((entry.skills() != null) ? entry.skills() : List.of());
		List<String> tools = !told.tools().isEmpty() ? told.tools()
				: (entry.tools() != null) ? entry.tools() : List.of();
		return new TaskEffort(TaskEffort.rounded(minutes), skills, tools,
				byRule ? "the rule of the task" : entry.source());
	}

	/**
	 * The tools that kinds of work ask for.
	 * @return in no order
	 */
	public Set<String> tools() {
		return this.byWork.values()
			.stream()
			.flatMap((entry) -> (entry.tools() != null) ? entry.tools().stream() : Stream.empty())
			.collect(Collectors.toSet());
	}

	private static double minutes(EffortFile.Entry entry, int plants, @Nullable Double squareMetres) {
		Double each = entry.squareMetre();
		return entry.start()
				+ ((each != null && squareMetres != null) ? each * squareMetres : entry.plant() * slow(plants));
	}

	private static double slow(int plants) {
		return Math.min(plants, SLOW_PLANTS) + Math.max(0, plants - SLOW_PLANTS) / FASTER;
	}

}
