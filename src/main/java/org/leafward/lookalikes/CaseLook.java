package org.leafward.lookalikes;

import java.util.List;
import java.util.Optional;
import org.leafward.lookalikes.core.Key;
import org.leafward.lookalikes.core.Question;
import org.leafward.lookalikes.core.Ranking;
import org.leafward.lookalikes.core.RecordLine;

/**
 * A case with what follows from it now.
 *
 * @param plantCase the case
 * @param key the key that was asked
 * @param record what the record says, struck lines included
 * @param ranking what it may be
 * @param next what to ask next; empty when nothing more would help
 */
public record CaseLook(PlantCase plantCase, Key key, List<RecordLine> record, Ranking ranking,
		Optional<Question> next) {

	public CaseLook {
		record = List.copyOf(record);
	}

	/**
	 * Whether a line of the record doesn't count.
	 * @param line the line
	 * @return true when somebody struck it
	 */
	public boolean struck(RecordLine line) {
		return this.plantCase.struck().contains(line.id());
	}

}
