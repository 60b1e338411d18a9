package org.leafward.lookalikes;

import java.util.List;
import org.leafward.lookalikes.core.RecordedCase;

/** Cases as they were answered, to try a changed key on. */
public interface RecordedCases {

	/**
	 * The latest answered cases, those whose cause was settled first.
	 * @param most how many at most, 1 to 500
	 * @return without names of people and places
	 */
	List<RecordedCase> latest(int most);

}
