package org.leafward.lookalikes;

import java.util.List;
import org.leafward.lookalikes.core.RecordedCase;
import org.leafward.lookalikes.store.CaseTable;
import org.springframework.stereotype.Component;

/** The stored cases, for trying a changed key. */
@Component
class AnsweredCases implements RecordedCases {

	private final CaseTable table;

	private final Cases cases;

	AnsweredCases(CaseTable table, Cases cases) {
		this.table = table;
		this.cases = cases;
	}

	@Override
	public List<RecordedCase> latest(int most) {
		return this.table.answered(most).stream().map(this::recorded).toList();
	}

	/** By species and month: the plant's own name is that of people. */
	private RecordedCase recorded(PlantCase one) {
		CaseLook look = this.cases.look(one);
		String species = (one.species() != null) ? one.species().value() : "a plant";
		return new RecordedCase("%s, %d-%02d".formatted(species, one.seen().getYear(), one.seen().getMonthValue()),
				one.answers(), look.record().stream().filter((line) -> !look.struck(line)).toList(),
				one.closed() ? one.cause() : null);
	}

}
