package boughwright.storage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Tells a kiosk what another kiosk on the same database has changed. Whoever writes counts the topic up in the same transaction; each
 * kiosk looks once a second, with one query, whether anybody else has. What this kiosk wrote itself is never told. A listener that fails
 * is told again until it does not, so what matters is that it reads anew, not how often. Safe for several threads.
 */
@Component
public class Changes implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger(Changes.class);
    private static final long EVERY_MILLIS = 1_000;

    private final JdbcClient database;
    private final Map<String, Topic> topics = new HashMap<>();
    private ScheduledExecutorService looking;
    private boolean failing;

    /** What is known of a topic. Everything up to {@code known} has been told or was our own. */
    private static final class Topic {

        private long known;
        private final TreeSet<Long> inFlight = new TreeSet<>();
        private final TreeSet<Long> own = new TreeSet<>();
        private final List<Runnable> listeners = new ArrayList<>();
    }

    public Changes(JdbcClient database) {
        this.database = database;
        versions().forEach((topic, version) -> topic(topic).known = version);
    }

    /**
     * Says, within a transaction, that something of a topic is changed by it. Whoever comes second waits here until the first has committed
     * or given up: so when this is the first thing that a transaction does, those of one topic follow each other, on all kiosks.
     *
     * @param topic one that a migration has put into {@code change_count}
     * @return how often the topic has been counted now; it rises from commit to commit
     */
    public long bump(String topic) {
        if (!TransactionSynchronizationManager.isActualTransactionActive()) {
            throw new IllegalStateException("a change is counted in the transaction that makes it");
        }
        if (database.sql("update change_count set version = version + 1 where topic = :topic").param("topic", topic).update() == 0) {
            throw new IllegalArgumentException("no topic " + topic);
        }
        long version = version(topic);
        synchronized (topics) {
            topic(topic).inFlight.add(version);
        }
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCompletion(int status) {
                ended(topic, version, status == STATUS_COMMITTED);
            }
        });
        return version;
    }

    /** How often a topic has been counted up to now. What is read after this may be newer than it, and is never older. */
    public long version(String topic) {
        return database.sql("select version from change_count where topic = :topic").param("topic", topic).query(Long.class).single();
    }

    private void ended(String name, long version, boolean committed) {
        synchronized (topics) {
            Topic topic = topic(name);
            topic.inFlight.remove(version);
            if (committed && version > topic.known) {
                topic.own.add(version);
                while (topic.own.remove(topic.known + 1)) {
                    topic.known++;
                }
            }
        }
    }

    /** Calls, on a thread of its own, after another kiosk has changed something of the topic; several changes may be told as one. */
    public void whenChanged(String topic, Runnable listener) {
        synchronized (topics) {
            topic(topic).listeners.add(listener);
        }
    }

    private Topic topic(String name) {
        return topics.computeIfAbsent(name, n -> new Topic());
    }

    @EventListener(ApplicationReadyEvent.class)
    synchronized void begin() {
        if (looking == null) {
            looking = Executors.newSingleThreadScheduledExecutor(task -> {
                Thread thread = new Thread(task, "looking for changes");
                thread.setDaemon(true);
                return thread;
            });
            looking.scheduleWithFixedDelay(this::lookAgain, EVERY_MILLIS, EVERY_MILLIS, TimeUnit.MILLISECONDS);
        }
    }

    @Override
    public synchronized void destroy() throws InterruptedException {
        if (looking != null) {
            looking.shutdown();
            looking.awaitTermination(EVERY_MILLIS, TimeUnit.MILLISECONDS);
        }
    }

    /** A database that is away comes back; until then one line in the log is enough. */
    private void lookAgain() {
        try {
            look();
            if (failing) {
                LOG.info("What other kiosks change is seen again");
            }
            failing = false;
        } catch (RuntimeException e) {
            if (!failing) {
                LOG.warn("What other kiosks change is not seen at the moment: {}", e.toString());
            }
            failing = true;
        }
    }

    /** Looks once, and tells what others have changed since. */
    public void look() {
        RuntimeException failure = null;
        for (Map.Entry<String, Long> entry : versions().entrySet()) {
            long upTo = certain(entry.getKey(), entry.getValue());
            List<Runnable> listeners;
            synchronized (topics) {
                Topic topic = topic(entry.getKey());
                if (upTo <= topic.known) {
                    continue;
                }
                listeners = List.copyOf(topic.listeners);
            }
            try {
                listeners.forEach(Runnable::run);
                told(entry.getKey(), upTo);
            } catch (RuntimeException e) {
                // The other topics are told all the same; this one is told again the next time.
                failure = e;
            }
        }
        if (failure != null) {
            throw failure;
        }
    }

    /** A version that we have counted and whose end we do not know yet may be ours or, when we give it up, another's: it is left for later. */
    private long certain(String name, long version) {
        synchronized (topics) {
            Long first = topic(name).inFlight.isEmpty() ? null : topic(name).inFlight.first();
            return first == null || first > version ? version : first - 1;
        }
    }

    private void told(String name, long upTo) {
        synchronized (topics) {
            Topic topic = topic(name);
            topic.known = Math.max(topic.known, upTo);
            topic.own.headSet(topic.known, true).clear();
            while (topic.own.remove(topic.known + 1)) {
                topic.known++;
            }
        }
    }

    private Map<String, Long> versions() {
        Map<String, Long> versions = new HashMap<>();
        database.sql("select topic, version from change_count").query(row -> {
            versions.put(row.getString("topic"), row.getLong("version"));
        });
        return versions;
    }
}
