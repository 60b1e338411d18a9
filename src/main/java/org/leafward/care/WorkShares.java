package org.leafward.care;

import java.util.Collection;
import org.leafward.accounts.PersonId;
import org.leafward.care.store.WorkShareTable;
import org.leafward.measure.DayWindow;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** How much of some work was done, for those who asked many people for it. */
@Service
public class WorkShares {

	private final WorkShareTable table;

	WorkShares(WorkShareTable table) {
		this.table = table;
	}

	/**
	 * Tasks by what became of them.
	 *
	 * @param done somebody did them
	 * @param leftOut somebody left them out on purpose
	 * @param open nobody said anything
	 */
	public record Share(long done, long leftOut, long open) {

		/** No task. */
		public static final Share NONE = new Share(0, 0, 0);

		/**
		 * Both together.
		 * @param other the other one
		 * @return the sums
		 */
		public Share with(Share other) {
			return new Share(this.done + other.done, this.leftOut + other.leftOut, this.open + other.open);
		}

		/**
		 * How many there are.
		 * @return 0 or more
		 */
		public long all() {
			return this.done + this.leftOut + this.open;
		}

		/**
		 * Share that was done.
		 * @return percent, rounded; 0 without tasks
		 */
		public int percent() {
			return (all() > 0) ? (int) Math.round(100.0 * this.done / all()) : 0;
		}

	}

	/**
	 * What became of the tasks of some people.
	 * @param people whose, at most 10,000
	 * @param works codes of kinds of work, such as {@code cover}
	 * @param days tasks that overlap these days; hold-offs and what was withdrawn don't
	 * count
	 * @return the counts of this moment
	 */
	@Transactional(readOnly = true)
	public Share of(Collection<PersonId> people, Collection<String> works, DayWindow days) {
		return (people.isEmpty() || works.isEmpty()) ? Share.NONE : this.table.count(people, works, days);
	}

}
