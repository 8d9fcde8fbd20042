package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import jakarta.servlet.MultipartConfigElement;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.photo.Photo;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.bench.KeepPhoto;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.bench.BenchPage;
import org.lapwright.app.web.bench.PhotoPage;
import org.lapwright.app.web.view.Shell.Tab;

/** The photo of a car: shown, kept, taken away. */
final class PhotoRoutes {
    private final OwnGarage garage;
    private final KeepPhoto keepPhoto;
    private final Pages pages;

    PhotoRoutes(UseCases useCases, Pages pages) {
        this.garage = useCases.physics().garage();
        this.keepPhoto = useCases.bench().keepPhoto();
        this.pages = pages;
    }

    void show(Context context) {
        show(context, Forms.car(garage, context.queryParam("name")), List.of());
    }

    void picture(Context context) {
        KeptFile car = Forms.car(garage, context.queryParam("name"));
        byte[] jpeg = (car.example() ? Optional.<byte[]>empty() : keepPhoto.of(car.name()))
                .orElseThrow(() -> new Problem(404, "This car has no photo.", "Nothing is lost."));
        context.contentType("image/jpeg").result(jpeg);
    }

    void press(Context context) {
        if (!context.isMultipartFormData()) {
            throw Problem.wrongType("multipart/form-data");
        }
        // Longer than any other form may be: what this request allows goes before what all do.
        context.req()
                .setAttribute(
                        "org.eclipse.jetty.multipartConfig",
                        new MultipartConfigElement(
                                "", Door.MOST_PHOTO_BYTES, Door.MOST_PHOTO_BYTES, (int) Door.MOST_PHOTO_BYTES));
        KeptFile car = Forms.car(garage, context.formParam("name"));
        if (car.example()) {
            throw new Problem(422, "The example cars have no photos.", "Nothing was saved.");
        }
        try {
            if ("remove".equals(context.formParam("do"))) {
                keepPhoto.remove(car.name());
            } else {
                keepPhoto.keep(car.name(), Photo.encodedAnew(sent(context)));
            }
            context.redirect(BenchPage.address(car.name()), HttpStatus.SEE_OTHER);
        } catch (IllegalArgumentException wrong) {
            context.status(422);
            show(context, car, List.of("Nothing was saved: " + wrong.getMessage() + "."));
        } catch (StoreException failed) {
            context.status(503);
            show(context, car, List.of("Not saved. " + failed.getMessage()));
        }
    }

    private static byte[] sent(Context context) {
        UploadedFile file = context.uploadedFile("file");
        if (file == null || file.size() == 0) {
            throw new IllegalArgumentException("no photo was chosen; choose one first");
        }
        if (file.size() > Photo.MOST_BYTES) {
            throw new IllegalArgumentException("the photo is too long; at most 15 MB fit: send a smaller one");
        }
        try (InputStream in = file.content()) {
            return in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the uploaded photo cannot be read", unreadable);
        }
    }

    private void show(Context context, KeptFile car, List<String> problems) {
        boolean there = !car.example() && keepPhoto.isThere(car.name());
        pages.show(
                context,
                "bench/photo.jte",
                new PhotoPage(
                        pages.shell("Photo of " + car.name(), Tab.BENCH), car.name(), there, car.example(), problems));
    }
}
