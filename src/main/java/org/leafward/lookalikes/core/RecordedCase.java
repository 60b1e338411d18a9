package org.leafward.lookalikes.core;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A case as it was answered.
 *
 * @param label what to call it, without names of people and places
 * @param answers what was answered
 * @param record what the record said, without struck lines
 * @param settled the cause that it was settled with; null while it is open
 */
public record RecordedCase(String label, Answers answers, List<RecordLine> record, @Nullable String settled) {

	public RecordedCase {
		record = List.copyOf(record);
	}

}
