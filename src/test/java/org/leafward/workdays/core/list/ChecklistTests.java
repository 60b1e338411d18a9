package org.leafward.workdays.core.list;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.leafward.workdays.core.list.Checklist.Line;
import org.leafward.workdays.core.list.Checklist.Thing;

import static org.assertj.core.api.Assertions.assertThat;

class ChecklistTests {

	private static Thing thing(String task, String plant, @Nullable Integer place, @Nullable Integer square,
			@Nullable String caution, String... tools) {
		return new Thing(task, plant, place, square, "Mulch", "Lay it 8 cm deep.", null, 30, List.of(), List.of(tools),
				caution, task.equals("d"));
	}

	private static final Checklist LIST = Checklist.of("s", "Park", "Mill Lane", 1,
			List.of(thing("a", "zinnias", null, null, "Mind your back.", "rakes", "barrow"),
					thing("b", "oak", 3, 10, null, "rakes"), thing("c", "hedge", 1, 43, "Mind your back."),
					thing("d", "elm", 2, 43, "No ladders.")));

	@Test
	void isInWalkingOrderWithWhatNobodyPlacedAtItsEnd() {
		assertThat(LIST.lines()).extracting(Line::plant).containsExactly("hedge", "elm", "oak", "zinnias");
		assertThat(LIST.lines()).extracting(Line::number).containsExactly(1, 2, 3, 4);
	}

	@Test
	void saysToolsAndCautionsOnce() {
		assertThat(LIST.tools()).containsExactly("barrow", "rakes");
		assertThat(LIST.cautions()).containsExactly("Mind your back.", "No ladders.");
	}

	@Test
	void countsWhatIsLeft() {
		assertThat(LIST.minutes()).isEqualTo(90);
		assertThat(LIST.done()).isEqualTo(1);
	}

	@Test
	void theSketchHasTheNumbersOfTheList() {
		assertThat(LIST.sketch()).isNotNull();
		List<List<String>> rows = LIST.sketch().rows();
		assertThat(rows).hasSize(Sketch.ROWS).allMatch((row) -> row.size() == Sketch.COLUMNS);
		// Square 43 is D6, square 10 is C2.
		assertThat(rows.get(5).get(3)).isEqualTo("1, 2");
		assertThat(rows.get(1).get(2)).isEqualTo("3");
		assertThat(Sketch.name(43)).isEqualTo("D6");
		assertThat(Sketch.name(10)).isEqualTo("C2");
	}

	@Test
	void manyNumbersInASquareAreSaidAsASpan() {
		Sketch sketch = new Sketch(java.util.Map.of(0, List.of(1, 2, 3, 5, 7, 8)));
		assertThat(sketch.rows().get(0).get(0)).isEqualTo("1–3, 5, 7, 8");
	}

	@Test
	void withoutAPlaceThereIsNoSketch() {
		assertThat(Checklist.of("s", "Park", "", 1, List.of(thing("a", "oak", 1, null, null))).sketch()).isNull();
	}

}
