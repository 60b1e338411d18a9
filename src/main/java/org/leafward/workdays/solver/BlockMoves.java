package org.leafward.workdays.solver;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.leafward.workdays.core.board.Slot;

/**
 * Moves of what belongs together: all that a team does at one site goes to another team
 * or day, or changes places with what another team does at another site. A task alone
 * seldom gains by moving, as it needs the way to its site.
 */
public class BlockMoves implements MoveIteratorFactory<Table, ManyMove> {

	@Override
	public long getSize(ScoreDirector<Table> director) {
		return director.getWorkingSolution().getPlaces().size();
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
				return block(table.getPlaces(), random);
			}

		};
	}

	private static ManyMove block(List<TaskPlace> places, Random random) {
		TaskPlace one = places.get(random.nextInt(places.size()));
		List<Slot> admitting = one.getAdmitting();
		Slot to = admitting.get(random.nextInt(admitting.size()));
		List<ManyMove.Change> changes = new ArrayList<>();
		Slot from = one.getSlot();
		int site = one.getSite();
		int other = -1;
		if (random.nextInt(3) == 0) {
			TaskPlace second = places.get(random.nextInt(places.size()));
			other = (second.getSlot() != null && second.getSlot() != from) ? second.getSite() : -1;
			to = (other >= 0 && second.getSlot() != null) ? second.getSlot() : to;
		}
		for (TaskPlace place : places) {
			if (place.getSlot() == from && place.getSite() == site) {
				add(changes, place, to);
			}
			else if (place.getSlot() == to && place.getSite() == other) {
				add(changes, place, from);
			}
		}
		return new ManyMove(changes);
	}

	private static void add(List<ManyMove.Change> changes, TaskPlace place, @Nullable Slot to) {
		boolean admitted = to == null || place.admits(to);
		if (admitted || place.getSlot() != null) {
			changes.add(new ManyMove.Change(place, admitted ? to : null));
		}
	}

}
