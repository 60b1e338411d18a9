package org.leafward.workdays.core.board;

/**
 * A plan to begin a search with, by taking what brings most, again and again: pins first,
 * then what stood before, then the date whose teams would earn most, and its sites one by
 * one. It can be carried out.
 */
public final class GreedyStart {

	private final Standing standing;

	private final Board board;

	private final Refill refill;

	private final int[] order;

	private GreedyStart(Standing standing) {
		this.standing = standing;
		this.board = standing.board();
		this.refill = new Refill(standing);
		this.order = Refill.order(this.board);
	}

	/**
	 * Fills a board.
	 * @param standing the board; nothing is placed on it
	 */
	public static void fill(Standing standing) {
		GreedyStart start = new GreedyStart(standing);
		start.keep(true);
		start.keep(false);
		for (int date = 0; date < start.board.dates(); date++) {
			if (standing.teamsOut(date) > 0 || start.board.date(date).locked()) {
				start.refill.date(date, () -> 1);
			}
		}
		start.drop();
		start.callDates();
	}

	private void keep(boolean pins) {
		for (int task : this.order) {
			boolean pinned = this.board.task(task).pinned() != null;
			if (pins ? pinned : (this.standing.slotOf(task) < 0 && this.board.before(task) >= 0)) {
				int best = -1;
				long most = Long.MIN_VALUE;
				long over = this.standing.overload();
				for (int slot : this.board.admission(task).slots()) {
					if (pins || this.board.slots().get(slot).date() == this.board.before(task)) {
						this.standing.put(task, slot);
						if (this.standing.overload() <= over && this.standing.points() > most) {
							most = this.standing.points();
							best = slot;
						}
						this.standing.put(task, -1);
					}
				}
				this.standing.put(task, best);
			}
		}
	}

	/** Takes dates off that cost more than they bring. */
	private void drop() {
		for (int date = 0; date < this.board.dates(); date++) {
			long before = this.standing.points();
			int loose = this.standing.loose();
			int[] slots = this.standing.slots();
			takeOff(date);
			if (this.standing.points() <= before || this.standing.loose() > loose) {
				for (int task : this.order) {
					this.standing.put(task, slots[task]);
				}
			}
		}
	}

	private void takeOff(int date) {
		for (int task : this.order) {
			int slot = this.standing.slotOf(task);
			if (slot >= 0 && this.board.slots().get(slot).date() == date) {
				this.standing.put(task, -1);
			}
		}
	}

	private void callDates() {
		boolean more = true;
		while (more && this.standing.called() < this.board.mostDates()) {
			long most = this.standing.points();
			int best = -1;
			for (int date = 0; date < this.board.dates(); date++) {
				if (this.standing.teamsOut(date) == 0 && !this.board.date(date).locked()) {
					this.refill.date(date, () -> 1);
					if (this.standing.points() > most) {
						most = this.standing.points();
						best = date;
					}
					takeOff(date);
				}
			}
			more = best >= 0;
			if (more) {
				this.refill.date(best, () -> 1);
			}
		}
	}

}
