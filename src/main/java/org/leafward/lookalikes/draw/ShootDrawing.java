package org.leafward.lookalikes.draw;

import java.util.List;

/** A shoot with its oldest leaves at the base and its newest at the tip. */
record ShootDrawing(ShootDrawing.Leaves leaves) {

	private static final List<String> PAIRS = List.of(
			"M36 72C26 74 12 70 6 58C18 54 30 60 36 72ZM36 72C46 74 60 70 66 58C54 54 42 60 36 72Z",
			"M36 50C27 51 16 47 11 36C21 33 31 39 36 50ZM36 50C45 51 56 47 61 36C51 33 41 39 36 50Z",
			"M36 28C30 28 23 25 20 17C27 16 33 20 36 28ZM36 28C42 28 49 25 52 17C45 16 39 20 36 28ZM36 28C32 20 32 12 36 4C40 12 40 20 36 28Z");

	/** Which, by the answers of the key. */
	enum Leaves {

		OLDEST("oldest-leaves-first", 0), YOUNGEST("youngest-leaves-first", 2), ALL("all-leaves-alike", -1);

		private final String evidence;

		private final int pair;

		Leaves(String evidence, int pair) {
			this.evidence = evidence;
			this.pair = pair;
		}

		String evidence() {
			return this.evidence;
		}

		boolean hurts(int pair) {
			return this.pair < 0 || this.pair == pair;
		}

	}

	String svg() {
		Sheet sheet = new Sheet(this.leaves.evidence(), 72, 88);
		sheet.line("M36 86V26");
		for (int i = 0; i < PAIRS.size(); i++) {
			if (this.leaves.hurts(i)) {
				sheet.dead(PAIRS.get(i));
			}
			else {
				sheet.live(PAIRS.get(i));
			}
			sheet.line(PAIRS.get(i));
		}
		return sheet.svg();
	}

}
