package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.SectionsInWords;
import org.lapwright.app.usecase.ShowKept;
import org.lapwright.app.usecase.run.DriveLive;
import org.lapwright.app.web.view.ExampleView;
import org.lapwright.app.web.view.KeptListPage;
import org.lapwright.app.web.view.KeptPage;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.app.web.view.VerdictView;

/** Kept comparisons, and the example garage among them. */
final class KeptRoutes {
    /** Pages that have the example's banner. */
    private static final List<String> BACK = List.of("/ladder", "/kept", "/bench", "/track");

    private final UseCases useCases;
    private final ShowKept kept;
    private final Pages pages;

    KeptRoutes(UseCases useCases, Pages pages) {
        this.useCases = useCases;
        this.kept = useCases.showKept();
        this.pages = pages;
    }

    void list(Context context) {
        ZoneId zone = ZoneId.systemDefault();
        int from = from(context);
        List<SavedComparison> page = kept.page(from, KeptListPage.ROWS + 1);
        pages.show(
                context,
                "keptlist.jte",
                new KeptListPage(
                        pages.shell("Kept comparisons", Tab.KEPT),
                        KeptListPage.rows(page.stream().limit(KeptListPage.ROWS).toList(), zone),
                        KeptListPage.rows(kept.removed(), zone),
                        example("/kept"),
                        from,
                        page.size() > KeptListPage.ROWS));
    }

    private static int from(Context context) {
        String asked = Forms.asked(context, "from");
        return asked.matches("\\d{1,8}") ? Integer.parseInt(asked) : 0;
    }

    void one(Context context) {
        SavedComparison saved = found(context);
        KeptComparison what = saved.kept();
        boolean removed = kept.isRemoved(saved.id());
        String notice = removed ? "removed" : context.queryParamMap().containsKey("saved") ? "saved" : "";
        pages.show(
                context,
                "kept.jte",
                new KeptPage(
                        pages.shell(what.car() + " on " + what.track(), Tab.KEPT),
                        saved.id(),
                        KeptPage.facts(saved, ZoneId.systemDefault()),
                        what,
                        notice,
                        VerdictView.of(useCases.judgeChange().judge(what.session(), what.settings()), what.settings()),
                        sections(saved.id()),
                        what.example() ? example("/kept") : ExampleView.NONE));
    }

    private SectionsInWords sections(long comparison) {
        DriveLive driveLive = useCases.run().driveLive();
        return driveLive
                .keptAs(comparison)
                .map(drive -> Forms.sections(driveLive, useCases.physics().garage(), drive))
                .orElse(SectionsInWords.NONE);
    }

    void remove(Context context) {
        SavedComparison saved = found(context);
        kept.remove(saved.id());
        context.redirect("/kept/" + saved.id(), HttpStatus.SEE_OTHER);
    }

    void bringBack(Context context) {
        SavedComparison saved = found(context);
        kept.bringBack(saved.id());
        context.redirect("/kept/" + saved.id(), HttpStatus.SEE_OTHER);
    }

    void removeExample(Context context) {
        kept.removeExample();
        context.redirect(back(context), HttpStatus.SEE_OTHER);
    }

    void bringExampleBack(Context context) {
        kept.bringExampleBack();
        context.redirect(back(context), HttpStatus.SEE_OTHER);
    }

    private ExampleView example(String back) {
        return new ExampleView(kept.exampleState(), back);
    }

    private SavedComparison found(Context context) {
        String id = context.pathParam("id");
        if (!id.matches("[1-9]\\d{0,17}")) {
            throw Problem.notFound();
        }
        return kept.find(Long.parseLong(id)).orElseThrow(Problem::notFound);
    }

    /** Only to pages of our own that show the banner. */
    private static String back(Context context) {
        String asked = Optional.ofNullable(context.formParam("back")).orElse("");
        return BACK.contains(asked) ? asked : "/kept";
    }
}
