package org.leafward.e2e;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A line to the server that can be cut. A browser that is told to play being offline does
 * so for pages only: its workers still reach the server, so that nothing would be proven
 * about them.
 */
final class Line implements AutoCloseable {

	private final int server;

	private final ServerSocket end;

	private final Set<Socket> open = ConcurrentHashMap.newKeySet();

	private volatile boolean cut;

	Line(int server) {
		this.server = server;
		try {
			this.end = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		start(this::listen);
	}

	int port() {
		return this.end.getLocalPort();
	}

	/** Cuts the line, or mends it. */
	void connect(boolean there) {
		this.cut = !there;
		if (this.cut) {
			this.open.forEach(Line::shut);
		}
	}

	private void listen() {
		try {
			while (true) {
				Socket near = this.end.accept();
				this.open.add(near);
				if (this.cut) {
					shut(near);
				}
				else {
					start(() -> join(near));
				}
			}
		}
		catch (IOException ex) {
			// Closed.
		}
	}

	private void join(Socket near) {
		try (Socket far = new Socket(InetAddress.getLoopbackAddress(), this.server)) {
			this.open.add(far);
			start(() -> pass(far, near));
			pass(near, far);
		}
		catch (IOException ex) {
			shut(near);
		}
	}

	private void pass(Socket from, Socket to) {
		try {
			InputStream in = from.getInputStream();
			OutputStream out = to.getOutputStream();
			in.transferTo(out);
		}
		catch (IOException ex) {
			// Cut.
		}
		finally {
			shut(from);
			shut(to);
			this.open.remove(from);
			this.open.remove(to);
		}
	}

	private static void shut(Socket one) {
		try {
			one.close();
		}
		catch (IOException ex) {
			// It is closed.
		}
	}

	private static void start(Runnable work) {
		Thread thread = new Thread(work, "line");
		thread.setDaemon(true);
		thread.start();
	}

	@Override
	public void close() {
		this.cut = true;
		shutAll();
	}

	private void shutAll() {
		try {
			this.end.close();
		}
		catch (IOException ex) {
			// It is closed.
		}
		this.open.forEach(Line::shut);
	}

}
