package org.leafward.lookalikes;

import java.time.Instant;
import java.util.Collection;
import java.util.Locale;
import org.leafward.lookalikes.store.CaseTable;
import org.springframework.stereotype.Service;

/** How often the help desk was asked, without who asked and of what. */
@Service
public class AskedCases {

	private final CaseTable table;

	AskedCases(CaseTable table) {
		this.table = table;
	}

	/**
	 * Cases of which the help desk was asked.
	 * @param counties names of counties, in any case of letters
	 * @param from since when
	 * @param to until when, exclusive
	 * @return 0 or more
	 */
	public long asked(Collection<String> counties, Instant from, Instant to) {
		return this.table.asked(counties.stream().map((one) -> one.toLowerCase(Locale.ROOT)).toList(), from, to);
	}

}
