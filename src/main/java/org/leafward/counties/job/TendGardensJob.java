package org.leafward.counties.job;

import org.leafward.counties.ModelGardens;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Makes the model gardens and looks after their plants once a day. */
@DisallowConcurrentExecution
public class TendGardensJob implements Job {

	private final ModelGardens gardens;

	/**
	 * Creates the job.
	 * @param gardens what it calls
	 */
	public TendGardensJob(ModelGardens gardens) {
		this.gardens = gardens;
	}

	@Override
	public void execute(JobExecutionContext context) {
		this.gardens.tend();
	}

}
