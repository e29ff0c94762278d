using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using Microsoft.Playwright;
using NAudio.Midi;
using Passagework.Studio.Features.Exporting;
using Passagework.Studio.Tests.Hosting;
using Passagework.Tests.Outside;
using SkiaSharp;
using UglyToad.PdfPig;

namespace Passagework.Studio.Tests.Browsing;

/// <summary>Every form as it comes out of the page, opened by a reader that is not ours.</summary>
[Collection(BrowserTests.Name)]
public sealed class ExportPageTests(Chromium chromium, OneStudio one)
{
    private const string Exercise = "/exercises/groups-of-five-up";
    private const string Title = "Groups of five, rising";
    private const int Bars = 3;
    private const int Beats = 10;
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    // A minor pentatonic in box 1, in fives that rise by one note.
    private static readonly string[] Places = (
        "6:5 6:8 5:5 5:7 4:5 6:8 5:5 5:7 4:5 4:7 5:5 5:7 4:5 4:7 3:5 5:7 4:5 4:7 3:5 3:7 "
        + "4:5 4:7 3:5 3:7 2:5 4:7 3:5 3:7 2:5 2:8 3:5 3:7 2:5 2:8 1:5 3:7 2:5 2:8 1:5 1:8"
    ).Split(' ');

    private static readonly int[] Open = [64, 59, 55, 50, 45, 40];

    [Fact]
    public async Task Every_form_downloaded_from_the_page_is_understood_by_another_reader()
    {
        await using var desk = await Desk.At(one.Studio, chromium);
        var files = new Dictionary<string, byte[]>();
        // Of more than ten files in quick succession the browser asks its user whether they are wanted.
        foreach (var some in ExportForm.All.Chunk(6))
        {
            await desk.Open(Exercise);
            await desk.Page.GetByText("Export", new() { Exact = true }).ClickAsync();
            foreach (var form in some)
                files[form.Ending] = await Download(desk, form);
        }

        var bpm = await Bpm(desk);
        Assert.Multiple(
            () => AssertPdf(files["sheet.pdf"], pages: 1, "listen for The first of each group"),
            () => AssertPdf(files["pdf"], pages: 2, "skips back over a string between groups"),
            () => AssertSvg(files["sheet.svg"]),
            () => AssertSvg(files["svg"]),
            () => AssertText(Encoding.UTF8.GetString(files["txt"])),
            () => AssertScore(Encoding.UTF8.GetString(files["musicxml"])),
            () => AssertScore(Unpacked(files["mxl"])),
            () => AssertMidi(files["mid"], bpm),
            () => AssertSound(files["wav"], bpm),
            () => AssertPng(files["png"]),
            () => AssertIdea(files["json"], bpm)
        );
        Assert.Equal(11, files.Count);
        Assert.Empty(desk.Faults);
    }

    private static async Task<byte[]> Download(Desk desk, ExportForm form)
    {
        var link = desk.Page.Locator(".export").GetByText(form.Name, new() { Exact = true });
        var download = await desk.Page.RunAndWaitForDownloadAsync(() => link.ClickAsync());
        Assert.Equal($"groups-of-five-rising.{form.Ending}", download.SuggestedFilename);
        return await File.ReadAllBytesAsync(
            await download.PathAsync(),
            TestContext.Current.CancellationToken
        );
    }

    private static async Task<double> Bpm(Desk desk)
    {
        var address = await desk.Page.Locator(".export a").First.GetAttributeAsync("href");
        return double.Parse(address!.Split("bpm=")[1], CultureInfo.InvariantCulture);
    }

    private static void AssertPdf(byte[] file, int pages, string words)
    {
        using var pdf = PdfDocument.Open(file);
        Assert.Equal(pages, pdf.NumberOfPages);
        var text = string.Join(' ', pdf.GetPage(1).GetWords().Select(word => word.Text));
        Assert.Contains(Title, text, StringComparison.Ordinal);
        Assert.Contains(words, text, StringComparison.OrdinalIgnoreCase);
        Assert.InRange(pdf.GetPage(1).Paths.Count, 100, 100_000);
    }

    private static void AssertSvg(byte[] file)
    {
        var root = XDocument.Load(new MemoryStream(file)).Root!;
        Assert.Equal(Svg + "svg", root.Name);
        Assert.Contains(Title, root.Element(Svg + "desc")?.Value, StringComparison.Ordinal);
        var box = root.Attribute("viewBox")!
            .Value.Split(' ')
            .Select(number => double.Parse(number, CultureInfo.InvariantCulture))
            .ToArray();
        Assert.Equal([0, 0], box[..2]);
        Assert.InRange(box[2], 150, 300);
        Assert.InRange(box[3], 100, 400);
        // Signs are drawn once and used where they stand: none may be missing.
        var signs = root.Descendants().Select(one => $"#{one.Attribute("id")?.Value}").ToHashSet();
        var used = root.Descendants(Svg + "use").Select(use => use.Attribute("href")!.Value).ToList();
        Assert.InRange(used.Count, 100, 10_000);
        Assert.All(used, use => Assert.Contains(use, signs));
    }

    // Reads the six lines as an eye does: a number stands under its stroke, the lowest line is string 6.
    private static void AssertText(string text)
    {
        var places = new List<string>();
        var lines = text.Split('\n');
        for (var top = 0; top < lines.Length; top++)
        {
            if (!lines[top].StartsWith("     e|", StringComparison.Ordinal))
                continue;

            var six = lines[top..(top + 6)];
            Assert.Equal("eBGDAE", string.Concat(six.Select(line => line.Trim()[0])));
            Assert.Single(six.Select(line => line.TrimEnd().Length).Distinct());
            places.AddRange(
                Enumerable
                    .Range(0, six[0].TrimEnd().Length)
                    .SelectMany(column => six.Select((line, i) => (Sign: line[column], String: i + 1)))
                    .Where(at => char.IsAsciiDigit(at.Sign))
                    .Select(at => $"{at.String}:{at.Sign}")
            );
        }

        Assert.Equal(Places, places);
        Assert.StartsWith(Title, text, StringComparison.Ordinal);
    }

    private static void AssertScore(string score)
    {
        var seen = NodeScript.Ask("scores.mjs", "musicxml-io", JsonSerializer.Serialize(new[] { score }));
        var part = Assert.Single(Assert.Single(seen.RootElement.EnumerateArray()).EnumerateArray());
        Assert.Equal(Bars, part.GetProperty("bars").GetInt32());
        // Every note stands on both staves.
        Assert.Equal(2 * Places.Length, part.GetProperty("notes").GetInt32());
        Assert.Equal(
            Places,
            part.GetProperty("strings")
                .EnumerateArray()
                .Zip(part.GetProperty("frets").EnumerateArray(), (of, fret) => $"{of}:{fret}")
        );
    }

    // As the standard of the packed form says: the container names the score.
    private static string Unpacked(byte[] file)
    {
        using var zip = new ZipArchive(new MemoryStream(file));
        var container = XDocument.Parse(Read(zip, "META-INF/container.xml"));
        var root = container.Descendants().First(one => one.Name.LocalName == "rootfile");
        return Read(zip, root.Attribute("full-path")!.Value);
    }

    private static string Read(ZipArchive zip, string name)
    {
        using var reader = new StreamReader(zip.GetEntry(name)!.Open());
        return reader.ReadToEnd();
    }

    private static void AssertMidi(byte[] file, double bpm)
    {
        var midi = new MidiFile(new MemoryStream(file), strictChecking: true);
        var notes = midi.Events.SelectMany(track => track).OfType<NoteOnEvent>().Where(on => on.Velocity > 0);
        Assert.Equal(Places.Select(Key), notes.Select(note => note.NoteNumber));
        Assert.Equal(
            Enumerable.Range(0, Places.Length).Select(i => (long)i * midi.DeltaTicksPerQuarterNote / 4),
            notes.Select(note => note.AbsoluteTime)
        );
        Assert.Equal(bpm, midi.Events[0].OfType<TempoEvent>().Single().Tempo, 0.1);
    }

    private static int Key(string place)
    {
        var parts = place.Split(':').Select(part => int.Parse(part, CultureInfo.InvariantCulture)).ToArray();
        return Open[parts[0] - 1] + parts[1];
    }

    private static void AssertSound(byte[] file, double bpm)
    {
        var (sound, raw) = (Path.GetTempFileName(), Path.GetTempFileName());
        File.WriteAllBytes(sound, file);
        var said = OutsideProgram.Run(
            "ffprobe",
            ["-v", "error", "-show_entries", "stream=codec_name,sample_rate", "-of", "csv=p=0", sound]
        );
        OutsideProgram.Run("ffmpeg", ["-v", "error", "-i", sound, "-ac", "1", "-f", "s16le", "-y", raw]);
        var samples = System.Runtime.InteropServices.MemoryMarshal.Cast<byte, short>(File.ReadAllBytes(raw));
        File.Delete(sound);
        File.Delete(raw);

        Assert.Equal("pcm_s16le,44100", said.Trim());
        // A bar is counted in; the last notes ring on.
        var seconds = samples.Length / 44_100.0;
        Assert.InRange(seconds, (4 + Beats) * 60 / bpm, ((4 + Beats) * 60 / bpm) + 10);
        // Every beat is heard, those of the count too.
        var beat = (int)(60 / bpm * 44_100);
        for (var at = 0; at < 4 + Beats; at++)
        {
            var peak = 0;
            foreach (var sample in samples.Slice(at * beat, beat))
                peak = Math.Max(peak, Math.Abs((int)sample));

            Assert.InRange(peak, 1_000, 32_767);
        }
    }

    private static void AssertPng(byte[] file)
    {
        using var picture = SKBitmap.Decode(file);
        Assert.InRange(picture.Width, 800, 2_000);
        Assert.InRange(picture.Height, 400, 3_000);
        var dark = picture.Pixels.Count(pixel => pixel.Red + pixel.Green + pixel.Blue < 300);
        Assert.InRange(dark / (double)picture.Pixels.Length, 0.005, 0.2);
    }

    private static void AssertIdea(byte[] file, double bpm)
    {
        var idea = JsonDocument.Parse(file).RootElement;
        Assert.Equal(1, idea.GetProperty("passagework").GetInt32());
        Assert.Equal(Title, idea.GetProperty("title").GetString());
        Assert.Equal("A", idea.GetProperty("notes").GetProperty("root").GetString());
        Assert.Equal("minor pentatonic", idea.GetProperty("notes").GetProperty("scale").GetString());
        Assert.Equal("box", idea.GetProperty("layout").GetProperty("kind").GetString());
        Assert.Equal(
            [0, 1, 2, 3, 4],
            idea.GetProperty("cell").GetProperty("offsets").EnumerateArray().Select(step => step.GetInt32())
        );
        Assert.Equal(bpm, idea.GetProperty("rhythm").GetProperty("tempo").GetDouble(), 0.05);
    }
}
