package org.leafward.amounts.water;

/**
 * The rounds in which water is given, so that it soaks in and doesn't run off.
 *
 * @param count how many, 1 or more
 * @param pauseMinutes minutes from the end of one to the beginning of the next, 0 for a
 * single one
 */
public record Rounds(int count, int pauseMinutes) {

	/** All at once. */
	public static final Rounds ONE = new Rounds(1, 0);

	/**
	 * Water that stands on level, mulched ground before it runs off, mm; from memory.
	 */
	static final double STANDING = 5;

	/** More rounds than this nobody comes back for. */
	static final int MOST = 8;

	/**
	 * Between the cycles, Texas A&amp;M AgriLife Water University has 30 to 60 minutes.
	 */
	private static final int SHORT = 30;

	private static final int LONG = 60;

	/**
	 * The rounds for an amount.
	 * @param millimetres depth of water in all, 0 or more
	 * @param rate how fast it comes, mm/h, above 0
	 * @param ground the soil
	 * @return each leaves no more than {@value #STANDING} mm standing, unless that took
	 * more than {@value #MOST}
	 */
	public static Rounds of(double millimetres, double rate, Ground ground) {
		if (rate <= ground.intake()) {
			return ONE;
		}
		double each = STANDING / (1 - ground.intake() / rate);
		int count = (int) Math.ceil(millimetres / each - 1e-9);
		return (count <= 1) ? ONE : new Rounds(Math.min(MOST, count), pause(ground));
	}

	/**
	 * The rounds when it isn't known how fast the water comes.
	 * @param ground the soil
	 * @return one to three
	 */
	public static Rounds usual(Ground ground) {
		return (ground.usualRounds() == 1) ? ONE : new Rounds(ground.usualRounds(), pause(ground));
	}

	private static int pause(Ground ground) {
		return (60 * STANDING / ground.intake() <= SHORT) ? SHORT : LONG;
	}

	/**
	 * How it is done.
	 * @return for example " in 3 rounds an hour apart"; empty for one
	 */
	public String words() {
		return (this.count == 1) ? "" : " in %d rounds %s apart".formatted(this.count,
				(this.pauseMinutes == LONG) ? "an hour" : "half an hour");
	}

}
