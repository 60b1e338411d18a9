package org.leafward.advisories.conditions;

import java.util.List;
import java.util.Optional;
import org.leafward.advisories.core.watch.WatchCondition;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.plants.Catalogue;
import org.springframework.stereotype.Component;

/** The conditions of the watch, as they were when the server started. */
@Component
public class Conditions {

	private final List<WatchCondition> all;

	/**
	 * Reads the conditions.
	 * @param files finds the files
	 * @param reader reads them
	 * @param catalogue the plants that may be named
	 * @throws BrokenKnowledge with every problem of every file
	 */
	public Conditions(KnowledgeFiles files, KnowledgeReader reader, Catalogue catalogue) {
		this.all = List.copyOf(new ConditionReader(reader, catalogue).read(files.of("advisories")));
	}

	/**
	 * All conditions.
	 * @return in the order of the files
	 */
	public List<WatchCondition> all() {
		return this.all;
	}

	/**
	 * A condition.
	 * @param code its name
	 * @return empty when there is none
	 */
	public Optional<WatchCondition> find(String code) {
		return this.all.stream().filter((one) -> one.code().equals(code)).findFirst();
	}

}
