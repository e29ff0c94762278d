using System.IO.Compression;
using System.Text;
using Microsoft.Playwright;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Notation;
using Passagework.Studio.Features.Importing;
using Passagework.Studio.Tests.Hosting;

namespace Passagework.Studio.Tests.Browsing;

[Collection(BrowserTests.Name)]
public sealed class ImportPageTests(Chromium chromium, OneStudio one)
{
    private const string Page = "/exercises/import";

    private static readonly Realization Played = Measurer
        .Measure(Library.Find("groups-of-five-up").OrThrow().Recipe, Player.At(2))
        .OrThrow()
        .Realization;

    private StudioProcess Studio => one.Studio;

    [Fact]
    public async Task A_pasted_line_becomes_an_exercise_and_a_broken_one_stays_in_the_box()
    {
        await using var desk = await Desk.At(Studio, chromium);
        await desk.Open(Page);
        await Paste(desk, "Riff\n\ne|-0-3-|\nB|-----|\nG|---|\n");

        Assert.Contains("line 3, column", await Problem(desk), StringComparison.Ordinal);
        Assert.StartsWith(
            "Riff",
            await desk.Page.Locator("textarea").InputValueAsync(),
            StringComparison.Ordinal
        );
        Assert.Equal("", await desk.Barriers());

        await desk.Page.Locator("textarea").FillAsync(TextTab.Write(Played));
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Write it out" }).ClickAsync();

        var key = KeyAfter(desk);
        await desk.Open("/exercises");
        Assert.Equal(
            "Groups of five, rising",
            await desk.Page.Locator($"a[href='/exercises/{key}']").InnerTextAsync()
        );
    }

    [Fact]
    public async Task Files_of_every_kind_become_exercises_whatever_their_names()
    {
        await using var desk = await Desk.At(Studio, chromium);
        (string Name, byte[] File)[] files =
        [
            ("tune.mid", Midi.Write(Played)),
            ("tune.musicxml", Encoding.UTF8.GetBytes(MusicXml.Write(Played).OrThrow())),
            ("tune.mxl", MusicXml.WriteCompressed(Played).OrThrow()),
            ("wrong-name.mid", Encoding.UTF8.GetBytes(RecipeJson.Write(Played.Line.Recipe))),
        ];
        var keys = new List<string>();
        foreach (var (name, file) in files)
        {
            await desk.Open(Page);
            await Choose(desk, name, file);
            keys.Add(KeyAfter(desk));
        }

        await desk.Open("/exercises");
        foreach (var key in keys)
        {
            var row = Begun(desk).Filter(new() { Has = desk.Page.Locator($"a[href='/exercises/{key}']") });
            Assert.Contains("a minute", await row.InnerTextAsync(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Of_a_file_with_two_parts_the_second_can_be_chosen()
    {
        await using var desk = await Desk.At(Studio, chromium);
        await desk.Open(Page);
        await Choose(desk, "duet.musicxml", Encoding.UTF8.GetBytes(TwoParts));

        Assert.True(await desk.Page.GetByLabel("Upper (1 note)").IsCheckedAsync());
        Assert.Equal("", await desk.Barriers());
        await desk.Page.GetByLabel("Lower (2 notes)").CheckAsync();
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Read it" }).ClickAsync();

        KeyAfter(desk);
    }

    [Fact]
    public async Task Hostile_files_are_refused_or_shown_as_text()
    {
        await using var desk = await Desk.At(Studio, chromium);
        await desk.Open(Page);

        await Choose(desk, "<img src=x onerror=alert(1)>.musicxml", "<not-a-score/>"u8.ToArray());
        Assert.Contains(
            "<img src=x onerror=alert(1)>.musicxml",
            await Problem(desk),
            StringComparison.Ordinal
        );
        await Choose(desk, "bomb.mxl", Bomb());
        Assert.Contains("bomb.mxl", await Problem(desk), StringComparison.Ordinal);
        await Choose(desk, "picture.png", [0x89, (byte)'P', (byte)'N', (byte)'G', 0, 1, 2, 3]);
        Assert.Contains("picture.png", await Problem(desk), StringComparison.Ordinal);
        await Paste(desk, "Title: <script>alert(1)</script>\n\n" + TextTab.WriteBars(Played, 1, 1));
        await desk.Open("/exercises");

        Assert.Equal(
            1,
            await Begun(desk).Filter(new() { HasText = "<script>alert(1)</script>" }).CountAsync()
        );
        Assert.Equal(0, await desk.Page.Locator("main script:not([src]), main img").CountAsync());
    }

    [Fact]
    public async Task A_file_above_the_limit_is_named_before_and_after_it_is_sent()
    {
        await using var desk = await Desk.At(Studio, chromium);
        var file = Path.Combine(Studio.DataFolder, "large.musicxml");
        await using (var large = File.Create(file))
            large.SetLength(Upload.MostBytes + 1);

        await desk.Open(Page);
        await desk.Page.Locator("input[type=file]").SetInputFilesAsync(file);
        Assert.Contains("16 MB", await Problem(desk), StringComparison.Ordinal);

        // Without the script, which looks first.
        await desk.Page.EvaluateAsync("document.querySelector('input[type=file]').dataset.most = 1e9");
        await desk.Page.Locator("input[type=file]").SetInputFilesAsync(file);
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Write it out" }).ClickAsync();
        Assert.Contains("large.musicxml", await Problem(desk), StringComparison.Ordinal);

        // More than a page takes in at all.
        await using (var larger = File.OpenWrite(file))
            larger.SetLength(110 << 20);
        await desk.Page.EvaluateAsync("document.querySelector('input[type=file]').dataset.most = 1e9");
        await desk.Page.Locator("input[type=file]").SetInputFilesAsync(file);
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Write it out" }).ClickAsync();
        Assert.Equal(
            "What was sent is far too large to be music. What can be: at most 16 MB.",
            await Problem(desk)
        );
        Assert.Equal("Paste or open a line", await desk.Page.Locator("h1").InnerTextAsync());
    }

    [Fact]
    public async Task Text_that_is_too_long_is_said_when_it_is_pasted_and_stays_when_it_is_sent()
    {
        await using var desk = await Desk.At(Studio, chromium);
        await desk.Open(Page);
        var text = new string('-', 5 << 20);

        await desk.Page.Locator("textarea").FillAsync(text);
        Assert.Contains("at most 1 MB", await Problem(desk), StringComparison.Ordinal);
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Write it out" }).ClickAsync();

        Assert.Contains("too large for text tab: 5 MB", await Problem(desk), StringComparison.Ordinal);
        Assert.Equal(text.Length, (await desk.Page.Locator("textarea").InputValueAsync()).Length);
    }

    [Fact]
    public async Task While_a_file_is_read_the_page_says_so()
    {
        await using var desk = await Desk.At(Studio, chromium);
        await desk.Open(Page);
        await Assertions.Expect(desk.Page.Locator("#music-reading")).ToBeHiddenAsync();

        // Held back, for a page on its way elsewhere can't be looked at.
        await desk.Page.EvaluateAsync(
            "document.querySelector('form.music').addEventListener('submit', event => event.preventDefault())"
        );
        await Paste(desk, "no tab");

        await Assertions.Expect(desk.Page.Locator("#music-reading")).ToBeVisibleAsync();
    }

    private static ILocator Begun(Desk desk) =>
        desk
            .Page.Locator("section")
            .Filter(
                new()
                {
                    Has = desk.Page.GetByRole(
                        AriaRole.Heading,
                        new() { Name = "Begun, not yet on the shelf" }
                    ),
                }
            )
            .Locator("tbody tr");

    private static async Task<string> Problem(Desk desk) =>
        await desk.Page.Locator("[role=alert]:visible").InnerTextAsync();

    private static async Task Paste(Desk desk, string text)
    {
        await desk.Page.Locator("textarea").FillAsync(text);
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Write it out" }).ClickAsync();
    }

    private static string KeyAfter(Desk desk)
    {
        Assert.Matches("/exercises/[0-9a-f]{32}$", desk.Page.Url);
        return desk.Page.Url[^32..];
    }

    private static async Task Choose(Desk desk, string name, byte[] file)
    {
        await desk
            .Page.Locator("input[type=file]")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = name,
                    MimeType = "application/octet-stream",
                    Buffer = file,
                }
            );
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Write it out" }).ClickAsync();
    }

    private static byte[] Bomb()
    {
        using var file = new MemoryStream();
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        using (var score = zip.CreateEntry("score.musicxml", CompressionLevel.SmallestSize).Open())
        {
            var zeros = new byte[1 << 20];
            for (var megabyte = 0; megabyte < 100; megabyte++)
                score.Write(zeros);
        }

        return file.ToArray();
    }

    private const string TwoParts = """
        <score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Upper</part-name></score-part>
        <score-part id="P2"><part-name>Lower</part-name></score-part></part-list>
        <part id="P1"><measure number="1"><attributes><divisions>1</divisions></attributes>
        <note><pitch><step>E</step><octave>4</octave></pitch><duration>4</duration><voice>1</voice></note></measure></part>
        <part id="P2"><measure number="1"><attributes><divisions>1</divisions></attributes>
        <note><pitch><step>C</step><octave>4</octave></pitch><duration>2</duration><voice>1</voice></note>
        <note><pitch><step>D</step><octave>4</octave></pitch><duration>2</duration><voice>1</voice></note></measure></part>
        </score-partwise>
        """;
}
