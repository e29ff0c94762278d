using System.Text;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;
using Passagework.Engraving.Prints;
using Passagework.Engraving.Sheets;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;
using Passagework.Rhythm;
using Passagework.Sound.Mixing;
using Passagework.Sound.Performance;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Settings;

namespace Passagework.Studio.Features.Exporting;

/// <summary>Writes an exercise in one of its forms.</summary>
internal sealed class ExportExercise(OpenExercise open, ReadSettings settings, TimeProvider time)
{
    private const double PictureDpi = 150;

    /// <summary>The file of an exercise.</summary>
    /// <param name="key">Which exercise.</param>
    /// <param name="form">Which form.</param>
    /// <param name="bpm">Felt beats a minute; null takes the exercise's, else a relaxed one for the player.</param>
    /// <param name="stop">Gives up.</param>
    public async Task<Outcome<ExportedFile>> Export(
        ExerciseKey key,
        ExportForm form,
        double? bpm,
        CancellationToken stop = default
    )
    {
        var known = await settings.Read(stop);
        if (!(await open.Open(key, stop)).TryGet(out var exercise, out var fault))
        {
            return fault;
        }

        var recipe = bpm is null
            ? exercise.Recipe
            : exercise.Recipe with
            {
                Rhythm = exercise.Recipe.Rhythm with { TempoBpm = bpm },
            };
        return Measurer
            .Measure(recipe with { Title = exercise.Title }, known.Player)
            .Then(measured => Written(form, measured, known))
            .Then<ExportedFile>(write => new ExportedFile(
                $"{FileName.Of(exercise.Title)}.{form.Ending}",
                form.ContentType,
                write
            ));
    }

    private Outcome<Action<Stream>> Written(ExportForm form, Measurement measured, StudioSettings known)
    {
        var played = measured.Realization;
        return form.Ending switch
        {
            "txt" => Text(TextTab.Write(played)),
            "json" => Text(RecipeJson.Write(played.Line.Recipe)),
            "musicxml" => MusicXml.Write(played).Then(Text),
            "mxl" => MusicXml.WriteCompressed(played).Then(Bytes),
            "mid" => Bytes(Midi.Write(played)),
            "wav" => Sound(measured),
            "svg" => Picture(measured, known).Then(page => SvgWriter.Write(page, SvgStyle.Screen)).Then(Text),
            "png" => Picture(measured, known)
                .Then(page => PngWriter.Write(page, PictureDpi, Palette.Light))
                .Then(Bytes),
            "pdf" => ExercisePrint
                .Pages(measured, PrintOptions.Of(known.Style))
                .Then(document => PdfWriter.Write(document))
                .Then(Bytes),
            "sheet.svg" => Sheet(measured, known)
                .Then(document => SvgWriter.Write(document.Pages[0], SvgStyle.Print))
                .Then(Text),
            _ => Sheet(measured, known).Then(document => PdfWriter.Write(document)).Then(Bytes),
        };
    }

    private static Outcome<Page> Picture(Measurement measured, StudioSettings known) =>
        ExercisePrint.Picture(measured, PrintOptions.Of(known.Style));

    private Outcome<Document> Sheet(Measurement measured, StudioSettings known) =>
        SheetMaker.Make(
            [
                (
                    measured.Realization,
                    SheetDefaults.Of(measured, known.Style) with
                    {
                        Room = known.Room,
                        Teacher = known.Teacher,
                        From = DateOnly.FromDateTime(time.GetLocalNow().Date),
                    }
                ),
            ],
            SheetOptions.Of(known.Style)
        );

    private static Outcome<Action<Stream>> Sound(Measurement measured)
    {
        var bpm = measured.StartBpm;
        return Tempo.TryOf(bpm, out var tempo)
            ? TempoPlan
                .Steady(tempo)
                .Then(plan =>
                    Performer.Perform(
                        measured.Realization,
                        new PerformancePlan { Tempo = plan, CountInBars = 1 }
                    )
                )
                .Then(performance => Arrangement.Of(performance, new SoundPlan()))
                .Then<Action<Stream>>(arrangement =>
                    (Action<Stream>)(to => Write(arrangement.Levelled(), to))
                )
            : new Fault($"{bpm} is no tempo", "tempo", "10 to 1000 beats a minute");
    }

    private static void Write(Arrangement arrangement, Stream to) =>
        new WavFile(arrangement.SampleRate, arrangement.Mix.Channels, SampleFormat.Pcm16).Write(
            to,
            arrangement.Samples,
            arrangement.Mix.Render
        );

    private static Outcome<Action<Stream>> Text(string text) => Bytes(new UTF8Encoding(false).GetBytes(text));

    private static Outcome<Action<Stream>> Bytes(byte[] bytes) => (Action<Stream>)(to => to.Write(bytes));
}

/// <summary>A file to be handed out.</summary>
/// <param name="Name">Its name, without a folder.</param>
/// <param name="ContentType">Its media type.</param>
/// <param name="Write">Writes it.</param>
internal sealed record ExportedFile(string Name, string ContentType, Action<Stream> Write);
