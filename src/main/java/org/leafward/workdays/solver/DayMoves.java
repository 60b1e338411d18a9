package org.leafward.workdays.solver;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleSupplier;
import org.leafward.workdays.core.board.Board;
import org.leafward.workdays.core.board.Refill;
import org.leafward.workdays.core.board.Slot;
import org.leafward.workdays.core.board.Standing;

/**
 * Moves of teams and whole days: what some of them do is taken out, and what is free is
 * filled anew, with a little chance in it so that other sites are tried as well.
 */
public class DayMoves implements MoveIteratorFactory<Table, ManyMove> {

	@Override
	public long getSize(ScoreDirector<Table> director) {
		return Math.max(1, director.getWorkingSolution().standing().board().dates());
	}

	@Override
	public Iterator<ManyMove> createOriginalMoveIterator(ScoreDirector<Table> director) {
		return Collections.emptyIterator();
	}

	@Override
	public Iterator<ManyMove> createRandomMoveIterator(ScoreDirector<Table> director, Random random) {
		Table table = director.getWorkingSolution();
		return new Iterator<>() {

			@Override
			public boolean hasNext() {
				return !table.getPlaces().isEmpty();
			}

			@Override
			public ManyMove next() {
				return new Ruin(table, random).move();
			}

		};
	}

	/** One such move. The standing is as it was when it is made. */
	private static final class Ruin {

		private final Table table;

		private final Standing standing;

		private final Board board;

		private final Random random;

		private final boolean[] out;

		private final List<Integer> filled = new ArrayList<>();

		Ruin(Table table, Random random) {
			this.table = table;
			this.standing = table.standing();
			this.board = this.standing.board();
			this.random = random;
			this.out = new boolean[this.board.slots().size()];
		}

		ManyMove move() {
			int[] before = this.standing.slots();
			choose();
			List<Integer> loose = new ArrayList<>();
			for (TaskPlace place : this.table.getPlaces()) {
				int slot = before[place.getTask()];
				if (slot >= 0 && this.out[slot]) {
					this.standing.put(place.getTask(), -1);
					loose.add(place.getTask());
				}
			}
			Refill refill = this.table.refill();
			boolean joinFirst = this.random.nextBoolean();
			if (joinFirst) {
				refill.join(loose);
			}
			DoubleSupplier noise = () -> 0.6 + 0.4 * this.random.nextDouble();
			this.filled.forEach((slot) -> refill.slot(slot, noise));
			if (!joinFirst) {
				refill.join(loose);
			}
			List<ManyMove.Change> changes = new ArrayList<>();
			for (TaskPlace place : this.table.getPlaces()) {
				int now = this.standing.slotOf(place.getTask());
				if (now != before[place.getTask()]) {
					changes.add(new ManyMove.Change(place, (now >= 0) ? this.board.slots().get(now) : null));
				}
			}
			changes.forEach((change) -> this.standing.put(change.place().getTask(), before[change.place().getTask()]));
			return new ManyMove(changes);
		}

		/** Which slots are emptied, and which filled. */
		private void choose() {
			List<Slot> slots = this.board.slots();
			int way = this.random.nextInt(10);
			if (way < 7) {
				int count = 1 + this.random.nextInt(3);
				Slot first = slots.get(this.random.nextInt(slots.size()));
				empty(first, true);
				for (int i = 1; i < count; i++) {
					int near = first.number() + this.random.nextInt(17) - 8;
					empty(slots.get(Math.max(0, Math.min(slots.size() - 1, near))), true);
				}
				Collections.shuffle(this.filled, this.random);
				return;
			}
			int date = this.random.nextInt(this.board.dates());
			this.board.slotsOn(date).forEach((slot) -> empty(slot, way == 9));
			if (way == 8) {
				int other = Math.max(0, Math.min(this.board.dates() - 1, date + this.random.nextInt(9) - 4));
				this.board.slotsOn(other).forEach((slot) -> empty(slot, true));
			}
		}

		private void empty(Slot slot, boolean fill) {
			this.out[slot.number()] = true;
			if (fill && !this.filled.contains(slot.number())) {
				this.filled.add(slot.number());
			}
		}

	}

}
