package org.leafward.lookalikes.draw;

/** A tree or a shrub from afar, with the part that is hurt. */
record CrownDrawing(CrownDrawing.Part part) {

	private static final String CROWN = "M44 6C52 4 60 10 62 17C70 18 77 26 74 34C80 40 78 51 70 54C66 61 56 62 50 58C46 62 40 62 36 58C30 63 20 61 17 54C9 51 7 40 13 34C10 26 17 18 25 17C27 10 36 4 44 6Z";

	private static final String TRUNK = "M40 58C41 66 40 74 37 82H51C48 74 47 66 48 58";

	private static final String BRANCHES = "M44 72V24M44 56C36 50 28 46 22 38M44 56C52 50 60 46 66 38M44 42C38 36 33 30 30 22M44 42C50 36 55 30 58 22";

	private static final String SHRUB = "M10 80C4 64 8 46 18 38C20 26 32 18 44 20C56 16 68 26 70 38C80 46 84 64 78 80Z";

	/** Parts, by the answers of the key. */
	enum Part {

		WHOLE("crown-whole"), WINDY_SIDE("crown-windy-or-sunny-side"), ROAD_SIDE("crown-road-side"),
		SUNLIT("crown-sunlit"), LOW_INSIDE("crown-low-and-inside"), BRANCH("crown-branch-then-more"),
		SCATTERED("crown-scattered"), ABOVE_SNOW("crown-above-snow"), TOP_DOWN("crown-top-down-fast"),
		BARK("bark-dead-on-sunny-side");

		private final String evidence;

		Part(String evidence) {
			this.evidence = evidence;
		}

		String evidence() {
			return this.evidence;
		}

	}

	String svg() {
		Sheet sheet = new Sheet(this.part.evidence(), 88, 88);
		if (this.part == Part.ABOVE_SNOW) {
			return sheet.live(SHRUB)
				.within(SHRUB)
				.dead("M0 0H88V54H0Z")
				.end()
				.line(SHRUB)
				.strong("M2 54H86")
				.line("M2 80H86")
				.svg();
		}
		if (this.part == Part.BARK) {
			return bark(sheet);
		}
		sheet.live(CROWN).within(CROWN);
		hurt(sheet);
		sheet.end().line(CROWN).line(TRUNK);
		beside(sheet);
		if (this.part == Part.BRANCH || this.part == Part.SCATTERED || this.part == Part.LOW_INSIDE) {
			sheet.vein(BRANCHES);
		}
		return sheet.line("M6 82H82").svg();
	}

	private void hurt(Sheet sheet) {
		switch (this.part) {
			case WHOLE -> sheet.dead(CROWN);
			case WINDY_SIDE -> sheet.dead("M0 0H34C40 14 30 26 36 38C40 48 34 56 36 66H0Z");
			case ROAD_SIDE -> sheet.dead("M56 0H88V66H56C52 54 60 46 54 36C50 26 60 14 56 0Z");
			case SUNLIT -> sheet.dead("M0 0H88V22C76 30 70 20 60 27C52 32 44 22 34 28C24 33 12 26 0 32Z");
			case LOW_INSIDE -> sheet.dead("M26 64C20 52 30 40 44 40C58 40 68 52 62 64Z");
			case BRANCH -> sheet.dead("M44 58C56 52 62 44 66 30L88 34V62H60Z");
			case SCATTERED -> sheet.dead(24, 30, 6).dead(56, 20, 5).dead(66, 44, 6).dead(40, 46, 5).dead(26, 50, 4);
			case TOP_DOWN -> sheet.dead("M0 0H88V40C76 36 66 46 54 40C44 36 32 46 22 40C14 37 6 42 0 40Z");
			default -> throw new IllegalStateException("not drawn: " + this.part);
		}
	}

	/** Where the wind comes from, the road, the way that it takes. */
	private void beside(Sheet sheet) {
		switch (this.part) {
			case WINDY_SIDE -> sheet.line("M0 24H8M0 34H6M0 44H8");
			case ROAD_SIDE -> sheet.strong("M60 86H88M66 78H88");
			case TOP_DOWN -> sheet.strong("M83 8V28M79 23 83 29 87 23");
			default -> {
				// The crown says it all.
			}
		}
	}

	private static String bark(Sheet sheet) {
		String trunk = "M30 2C32 30 31 56 22 84H66C57 56 56 30 58 2Z";
		return sheet.live(trunk)
			.within(trunk)
			.dead("M34 8C31 28 33 50 27 76C36 70 39 50 39 34C39 24 38 14 34 8Z")
			.end()
			.vein("M45 4C46 30 46 56 44 82M52 4C52 30 53 56 57 82")
			.strong("M35 14C34 30 36 48 31 66")
			.line(trunk)
			.line("M4 84H84")
			.svg();
	}

}
