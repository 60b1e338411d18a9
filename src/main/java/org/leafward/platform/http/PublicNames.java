package org.leafward.platform.http;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.apache.hc.client5.http.DnsResolver;

/**
 * Finds the addresses of names for connections to strangers. The connection is made to
 * the very addresses that were checked here, so a name that changes its address between
 * the two gains nothing.
 */
final class PublicNames implements DnsResolver, AutoCloseable {

	/** A stranger's name server that never answers holds one of these for a while. */
	private static final int MOST_AT_A_TIME = 16;

	private final Lookup lookup;

	private final Duration patience;

	private final boolean privateToo;

	private final ExecutorService threads = new ThreadPoolExecutor(0, MOST_AT_A_TIME, 30, TimeUnit.SECONDS,
			new SynchronousQueue<>(), (work) -> {
				Thread thread = new Thread(work, "names-of-strangers");
				thread.setDaemon(true);
				return thread;
			});

	/**
	 * Creates it.
	 * @param lookup what knows the names
	 * @param patience how long an answer may take
	 * @param privateToo whether addresses that aren't public are given out as well
	 */
	PublicNames(Lookup lookup, Duration patience, boolean privateToo) {
		this.lookup = lookup;
		this.patience = patience;
		this.privateToo = privateToo;
	}

	/** What knows the addresses of names. */
	@FunctionalInterface
	interface Lookup {

		InetAddress[] find(String name) throws UnknownHostException;

	}

	@Override
	public InetAddress[] resolve(String name) throws UnknownHostException {
		InetAddress[] found = inTime(name, () -> this.lookup.find(name));
		return this.privateToo ? found : PublicAddresses.check(name, found);
	}

	private InetAddress[] inTime(String name, Callable<InetAddress[]> question) throws UnknownHostException {
		try {
			Future<InetAddress[]> answer = this.threads.submit(question);
			try {
				return answer.get(this.patience.toMillis(), TimeUnit.MILLISECONDS);
			}
			finally {
				answer.cancel(true);
			}
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw PublicAddresses.unknown(name);
		}
		catch (ExecutionException | TimeoutException | RejectedExecutionException ex) {
			throw PublicAddresses.unknown(name);
		}
	}

	@Override
	public String resolveCanonicalHostname(String name) {
		// Only used for Kerberos, which nobody speaks here.
		return name;
	}

	@Override
	public void close() {
		this.threads.shutdownNow();
	}

}
