package org.leafward.care.job;

import org.leafward.care.DayTurn;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Asks for the sites where another day has begun. */
@DisallowConcurrentExecution
public class DayTurnJob implements Job {

	private final DayTurn turn;

	/**
	 * Creates the job.
	 * @param turn what it calls
	 */
	public DayTurnJob(DayTurn turn) {
		this.turn = turn;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.turn.ask();
	}

}
