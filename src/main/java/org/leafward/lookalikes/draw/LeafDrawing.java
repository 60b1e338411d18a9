package org.leafward.lookalikes.draw;

/** A leaf with a pattern of injury, its tip up. */
record LeafDrawing(LeafDrawing.Pattern pattern) {

	private static final String BLADE = "M36 4C50 14 60 30 58 46C56 60 46 69 36 72C26 69 16 60 14 46C12 30 22 14 36 4Z";

	/** What stays green when the edge goes, and what goes along the veins. */
	private static final String HEART = "M36 20C40 25 41 28 45 31C43 34 49 38 46 43C48 48 44 50 44 55C40 58 40 62 36 66C32 62 32 58 28 55C28 50 24 48 26 43C23 38 29 34 27 31C31 28 32 25 36 20Z";

	private static final String MIDRIB = "M36 84V12";

	private static final String VEINS = "M36 64C42 60 48 55 52 48M36 64C30 60 24 55 20 48M36 50C42 46 49 40 53 33M36 50C30 46 23 40 19 33M36 36C41 32 45 27 48 21M36 36C31 32 27 27 24 21";

	/** Patterns, by the answers of the key. */
	enum Pattern {

		EDGE("leaf-edge-inward"), TIP("leaf-tips-burnt"), BETWEEN_VEINS("leaf-brown-between-veins"),
		YELLOW("leaf-yellow-between-veins"), ALONG_VEINS("leaf-brown-along-veins"), SPOTS("leaf-spots"),
		BLEACHED("leaf-bleached"), DOTS("leaf-fine-dots"), TWISTED("leaf-twisted"), LIMP("leaf-limp");

		private final String evidence;

		Pattern(String evidence) {
			this.evidence = evidence;
		}

		String evidence() {
			return this.evidence;
		}

	}

	String svg() {
		Sheet sheet = new Sheet(this.pattern.evidence(), 72, 88);
		if (this.pattern == Pattern.TWISTED) {
			return twisted(sheet);
		}
		if (this.pattern == Pattern.LIMP) {
			return limp(sheet);
		}
		sheet.live(BLADE).within(BLADE);
		boolean veins = true;
		switch (this.pattern) {
			case EDGE -> sheet.dead(BLADE).live(HEART).line(HEART);
			case TIP -> sheet.dead("M10 0H62V22C54 19 48 27 42 23C36 20 30 27 24 23C18 20 14 23 10 22Z")
				.line("M62 22C54 19 48 27 42 23C36 20 30 27 24 23C18 20 14 23 10 22");
			case BETWEEN_VEINS -> sheet.dead("M39 56C44 52 49 47 52 41C54 46 52 52 48 55C44 58 41 59 39 56Z")
				.dead("M33 56C28 52 23 47 20 41C18 46 20 52 24 55C28 58 31 59 33 56Z")
				.dead("M39 42C44 38 49 33 51 27C54 31 54 37 50 40C46 43 42 45 39 42Z")
				.dead("M33 42C28 38 23 33 21 27C18 31 18 37 22 40C26 43 30 45 33 42Z")
				.dead("M39 29C42 26 45 22 46 17C49 21 49 25 46 28C43 31 41 31 39 29Z")
				.dead("M33 29C30 26 27 22 26 17C23 21 23 25 26 28C29 31 31 31 33 29Z");
			case YELLOW -> {
				sheet.yellow(BLADE);
				sheet.strong(MIDRIB + VEINS);
				veins = false;
			}
			case ALONG_VEINS -> sheet.dead(
					"M34 72C32 64 34 60 31 56C27 55 24 53 21 49C25 50 28 51 32 52C34 46 30 42 27 40C24 38 21 36 20 34C26 36 30 40 34 42C35 34 33 26 36 16C38 26 36 34 38 44C43 42 48 38 52 33C50 40 44 46 39 49C40 56 40 64 38 72Z");
			case SPOTS -> sheet.dead(28, 28, 4)
				.dead(44, 26, 3)
				.dead(47, 42, 4.5)
				.dead(25, 45, 3.5)
				.dead(38, 56, 3)
				.dead(29, 60, 2.5)
				.dead(40, 36, 2.5);
			case BLEACHED -> sheet.bleached("M38 16C48 20 55 30 54 40C52 50 44 52 40 46C44 36 36 28 38 16Z")
				.line("M38 16C48 20 55 30 54 40C52 50 44 52 40 46C44 36 36 28 38 16Z");
			case DOTS -> {
				for (int i = 0; i < 90; i++) {
					// A grid that is shaken by a fixed rule, so that the drawing stays
					// the same.
					sheet.fleck(14 + i % 9 * 5.3 + (i * 37 % 7) * 0.5, 8 + i / 9 * 6.4 + (i * 53 % 9) * 0.5, 0.9);
				}
			}
			default -> throw new IllegalStateException("not drawn: " + this.pattern);
		}
		sheet.end();
		if (veins) {
			sheet.vein(VEINS).vein(MIDRIB);
		}
		return sheet.line(BLADE).line("M36 72V84").svg();
	}

	private static String twisted(Sheet sheet) {
		String left = "M36 70C20 66 10 52 16 38C20 28 30 24 26 12C36 18 34 30 32 40C31 50 38 58 36 70Z";
		String right = "M36 70C50 68 60 58 56 46C53 36 40 34 46 20C38 24 34 36 38 46C41 54 34 62 36 70Z";
		return sheet.live(left)
			.live(right)
			.line(left)
			.line(right)
			.vein("M35 66C24 60 18 50 22 40C25 32 31 28 28 18M38 66C48 62 54 56 51 48C48 40 42 38 43 28")
			.line("M36 70C34 76 39 78 36 84")
			.svg();
	}

	private static String limp(Sheet sheet) {
		String blade = "M34 22C42 26 52 34 54 48C56 60 52 72 44 80C42 70 36 64 30 56C24 48 22 34 34 22Z";
		return sheet.live(blade)
			.line("M12 84V6")
			.line("M12 16C20 8 30 12 34 22")
			.vein("M34 22C40 38 44 56 44 80M38 34C42 36 46 38 50 40M41 46C45 48 49 50 53 52M36 40C32 42 29 44 26 46M40 54C37 56 35 58 33 60")
			.line(blade)
			.svg();
	}

}
