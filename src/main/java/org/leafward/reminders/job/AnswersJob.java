package org.leafward.reminders.job;

import org.leafward.reminders.channel.mail.AnswerBox;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Reads answers to invitations from the mailbox. */
@DisallowConcurrentExecution
public class AnswersJob implements Job {

	private final AnswerBox box;

	/**
	 * Creates the job.
	 * @param box does the work
	 */
	public AnswersJob(AnswerBox box) {
		this.box = box;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.box.read();
	}

}
