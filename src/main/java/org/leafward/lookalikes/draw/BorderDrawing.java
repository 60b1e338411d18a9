package org.leafward.lookalikes.draw;

/** The line where dead leaf meets live leaf, as under a lens. */
record BorderDrawing(BorderDrawing.Border border) {

	private static final String FRAME = "M2 2H86V54H2Z";

	private static final String DEAD = "M0 0H34C40 10 30 18 36 28C41 38 31 46 36 56H0Z";

	private static final String EDGE = "M34 0C40 10 30 18 36 28C41 38 31 46 36 56";

	/** Borders, by the answers of the key. */
	enum Border {

		YELLOW("border-yellow"), RED_BROWN("border-red-brown"), SHARP("border-sharp"), FADING("border-fading");

		private final String evidence;

		Border(String evidence) {
			this.evidence = evidence;
		}

		String evidence() {
			return this.evidence;
		}

	}

	String svg() {
		Sheet sheet = new Sheet(this.border.evidence(), 88, 56);
		sheet.live(FRAME).within(FRAME);
		switch (this.border) {
			case YELLOW ->
				sheet.yellow("M34 0C40 10 30 18 36 28C41 38 31 46 36 56H54C49 46 59 38 54 28C48 18 58 10 52 0Z")
					.dead(DEAD)
					.line(EDGE)
					.line("M52 0C58 10 48 18 54 28C59 38 49 46 54 56");
			case RED_BROWN -> sheet.dead(DEAD).strong("M37 0C43 10 33 18 39 28C44 38 34 46 39 56");
			case SHARP -> sheet.dead(DEAD).line(EDGE);
			case FADING -> {
				sheet.dead("M0 0H18V56H0Z");
				for (int column = 0; column < 14; column++) {
					for (int row = 0; row < 9; row++) {
						double r = 3.9 - column * 0.27;
						sheet.dead(17 + column * 4.8 + (row % 2) * 2.4, 3 + row * 6.2, Math.max(0.35, r));
					}
				}
			}
			default -> throw new IllegalStateException("not drawn: " + this.border);
		}
		return sheet.end().line(FRAME).svg();
	}

}
