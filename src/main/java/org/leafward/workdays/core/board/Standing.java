package org.leafward.workdays.core.board;

import java.util.Arrays;

/**
 * Tasks in slots, and what that is worth, kept up as tasks move. Not thread-safe.
 * <p>
 * {@link #overload()} is 0 when the plan can be carried out; {@link #loose()} counts pins
 * that could be kept and aren't; {@link #points()} is the plan's worth. A plan is better
 * when the first is smaller, then the second, then when the third is larger.
 */
public final class Standing {

	/** Person-minutes for a site, a team with a tool, or a date too much. */
	private static final int TOO_MANY = 240;

	private final Board board;

	private final int[] slotOf;

	private final int[][] load;

	private final int[][] tasksAt;

	private final int[][] stops;

	private final int[] stopCount;

	private final int[] travel;

	private final int[] over;

	private final int[][] toolTasks;

	private final int[][] toolTeams;

	private final int[] toolLimits;

	private final int[] teamsOut;

	private final int mostSites;

	private final int teamCost;

	private final int travelCost;

	private int called;

	private long overload;

	private int loose;

	private long points;

	/**
	 * Nothing is placed; locked dates are called.
	 * @param board the problem
	 */
	public Standing(Board board) {
		this.board = board;
		int slots = board.slots().size();
		int sites = board.problem().sites().size();
		this.slotOf = new int[board.tasks()];
		this.load = new int[slots][board.kinds()];
		this.tasksAt = new int[slots][sites];
		this.stops = new int[slots][8];
		this.stopCount = new int[slots];
		this.travel = new int[slots];
		this.over = new int[slots];
		this.toolLimits = board.tools();
		this.toolTasks = new int[slots][this.toolLimits.length];
		this.toolTeams = new int[board.dates()][this.toolLimits.length];
		this.teamsOut = new int[board.dates()];
		this.mostSites = board.problem().rules().mostSites();
		this.teamCost = board.problem().rules().costs().team();
		this.travelCost = board.problem().rules().costs().travelMinute();
		clear();
	}

	/** Takes everything out again. */
	public void clear() {
		Arrays.fill(this.slotOf, -1);
		for (int slot = 0; slot < this.load.length; slot++) {
			Arrays.fill(this.load[slot], 0);
			Arrays.fill(this.tasksAt[slot], 0);
			Arrays.fill(this.toolTasks[slot], 0);
		}
		Arrays.fill(this.stopCount, 0);
		Arrays.fill(this.travel, 0);
		Arrays.fill(this.over, 0);
		Arrays.fill(this.teamsOut, 0);
		this.called = 0;
		this.overload = 0;
		this.loose = 0;
		this.points = 0;
		for (int date = 0; date < this.teamsOut.length; date++) {
			Arrays.fill(this.toolTeams[date], 0);
			this.called += this.board.date(date).locked() ? 1 : 0;
		}
		for (int task = 0; task < this.slotOf.length; task++) {
			this.points -= this.board.moved(task, -1);
			this.loose += pinned(task) ? 1 : 0;
		}
	}

	private boolean pinned(int task) {
		return this.board.task(task).pinned() != null && this.board.admission(task).slots().length > 0;
	}

	/**
	 * Puts a task somewhere, from wherever it was.
	 * @param task number of the task
	 * @param slot number of the slot, one that admits the task; -1 for nowhere
	 */
	public void put(int task, int slot) {
		int old = this.slotOf[task];
		if (old == slot) {
			return;
		}
		if (old >= 0) {
			change(task, old, -1);
		}
		if (slot >= 0) {
			change(task, slot, 1);
		}
		this.points += this.board.moved(task, old) - this.board.moved(task, slot);
		this.slotOf[task] = slot;
	}

	private void change(int task, int slot, int sign) {
		Slot team = this.board.slots().get(slot);
		int site = this.board.siteOf(task);
		this.load[slot][this.board.kindOf(task)] += sign * this.board.task(task).personMinutes();
		this.points += sign * this.board.value(task);
		this.loose -= pinned(task) ? sign : 0;
		this.tasksAt[slot][site] += sign;
		if (this.tasksAt[slot][site] == ((sign > 0) ? 1 : 0)) {
			stop(slot, team, site, sign);
		}
		tools(task, slot, team.date(), sign);
		int now = team.overload(this.load[slot], this.travel[slot])
				+ TOO_MANY * Math.max(0, this.stopCount[slot] - this.mostSites);
		this.overload += now - this.over[slot];
		this.over[slot] = now;
	}

	private void stop(int slot, Slot team, int site, int sign) {
		int[] here = this.stops[slot];
		if (sign > 0) {
			if (this.stopCount[slot] == here.length) {
				here = Arrays.copyOf(here, 2 * here.length);
				this.stops[slot] = here;
			}
			here[this.stopCount[slot]++] = site;
		}
		else {
			int at = 0;
			while (here[at] != site) {
				at++;
			}
			here[at] = here[--this.stopCount[slot]];
		}
		int minutes = this.board.tours().minutes(here, this.stopCount[slot]);
		this.points -= (long) this.travelCost * (minutes - this.travel[slot]);
		this.travel[slot] = minutes;
		if (this.stopCount[slot] == ((sign > 0) ? 1 : 0)) {
			team(team.date(), sign);
		}
	}

	private void team(int date, int sign) {
		this.points -= (long) sign * this.teamCost;
		this.teamsOut[date] += sign;
		if (this.teamsOut[date] == ((sign > 0) ? 1 : 0) && !this.board.date(date).locked()) {
			this.points -= (long) sign * this.board.dateCost(date);
			int before = Math.max(0, this.called - this.board.mostDates());
			this.called += sign;
			this.overload += (long) TOO_MANY * (Math.max(0, this.called - this.board.mostDates()) - before);
		}
	}

	private void tools(int task, int slot, int date, int sign) {
		for (int set = this.board.toolsOf(task); set != 0; set &= set - 1) {
			int tool = Integer.numberOfTrailingZeros(set);
			this.toolTasks[slot][tool] += sign;
			if (this.toolTasks[slot][tool] == ((sign > 0) ? 1 : 0)) {
				int before = Math.max(0, this.toolTeams[date][tool] - this.toolLimits[tool]);
				this.toolTeams[date][tool] += sign;
				this.overload += (long) TOO_MANY
						* (Math.max(0, this.toolTeams[date][tool] - this.toolLimits[tool]) - before);
			}
		}
	}

	/**
	 * Whether a team goes to a site.
	 * @param slot number of the slot
	 * @param site number of the site
	 * @return whether it has a task there
	 */
	public boolean isAt(int slot, int site) {
		return this.tasksAt[slot][site] > 0;
	}

	/**
	 * How many sites a team goes to.
	 * @param slot number of the slot
	 * @return 0 and up
	 */
	public int stopCount(int slot) {
		return this.stopCount[slot];
	}

	public Board board() {
		return this.board;
	}

	public int slotOf(int task) {
		return this.slotOf[task];
	}

	/**
	 * Where each task is.
	 * @return numbers of slots, -1 for nowhere
	 */
	public int[] slots() {
		return this.slotOf.clone();
	}

	/**
	 * How many teams go out on a date.
	 * @param date number of the date
	 * @return 0 and up
	 */
	public int teamsOut(int date) {
		return this.teamsOut[date];
	}

	/**
	 * What it costs to call the date of a slot.
	 * @param slot number of the slot
	 * @return points; none when a team goes out on it already
	 */
	int toCall(int slot) {
		int date = this.board.slots().get(slot).date();
		return (this.teamsOut[date] > 0) ? 0 : this.board.dateCost(date);
	}

	/**
	 * How many dates are called.
	 * @return locked ones count
	 */
	public int called() {
		return this.called;
	}

	/**
	 * The sites of a team.
	 * @param slot number of the slot
	 * @return numbers of sites, in no order
	 */
	public int[] stops(int slot) {
		return Arrays.copyOf(this.stops[slot], this.stopCount[slot]);
	}

	/**
	 * Minutes of a team's way.
	 * @param slot number of the slot
	 * @return minutes
	 */
	public int travel(int slot) {
		return this.travel[slot];
	}

	/**
	 * What a team has to do.
	 * @param slot number of the slot
	 * @return person-minutes
	 */
	public int effort(int slot) {
		return Arrays.stream(this.load[slot]).sum();
	}

	public long overload() {
		return this.overload;
	}

	public int loose() {
		return this.loose;
	}

	public long points() {
		return this.points;
	}

}
