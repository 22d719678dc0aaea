package boughwright.counter;

import java.time.Clock;
import java.time.LocalDate;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * What has to be done from time to time: holds fall when their time is up, old consultations are forgotten once a day. Several kiosks on one
 * database may do both; what one has done the other finds done. A chore that fails is told once and tried again.
 */
@Component
class Chores implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger(Chores.class);
    private static final int EVERY_SECONDS = 15;

    private final Holds holds;
    private final Keeping keeping;
    private final Deeds deeds;
    private final Clock clock;
    private ScheduledExecutorService worker;
    private LocalDate forgotOn;
    private boolean failing;

    Chores(Holds holds, Keeping keeping, Deeds deeds, Clock clock) {
        this.holds = holds;
        this.keeping = keeping;
        this.deeds = deeds;
        this.clock = clock;
    }

    @EventListener(ApplicationReadyEvent.class)
    synchronized void begin() {
        if (worker == null) {
            worker = Executors.newSingleThreadScheduledExecutor(work -> {
                Thread thread = new Thread(work, "chores of the counter");
                thread.setDaemon(true);
                return thread;
            });
            worker.scheduleWithFixedDelay(this::tryAll, 1, EVERY_SECONDS, TimeUnit.SECONDS);
        }
    }

    private void tryAll() {
        try {
            doAll();
            failing = false;
        } catch (RuntimeException e) {
            if (!failing) {
                LOG.warn("The chores of the counter could not be done, and are tried again", e);
            }
            failing = true;
        }
    }

    void doAll() {
        holds.lapse().forEach(h -> LOG.info("The hold {} of {} has fallen", h.number(), h.code()));
        LocalDate today = LocalDate.now(clock);
        if (!today.equals(forgotOn)) {
            int forgotten = keeping.forgetOld();
            deeds.forgetOld();
            forgotOn = today;
            if (forgotten > 0) {
                LOG.info("{} consultations were forgotten, as the shop's terms say", forgotten);
            }
        }
    }

    @Override
    public synchronized void destroy() throws InterruptedException {
        if (worker != null) {
            worker.shutdown();
            worker.awaitTermination(EVERY_SECONDS, TimeUnit.SECONDS);
        }
    }
}
