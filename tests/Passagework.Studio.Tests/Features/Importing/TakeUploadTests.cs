using System.Text;
using Microsoft.AspNetCore.Http;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Notation;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Importing;

namespace Passagework.Studio.Tests.Features.Importing;

public sealed class TakeUploadTests : IAsyncLifetime
{
    private Room _room = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _room = await Room.Open();

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Theory]
    [InlineData("../../etc/passwd.tab", "passwd")]
    [InlineData("C:\\music\\a\r\nb.tab", "ab")]
    public async Task Of_a_name_only_the_last_part_is_taken(string name, string title)
    {
        var read = Assert.IsType<ImportStep.Read>(await Take(File(name, Tab(titled: false))));

        Assert.Equal(title, read.Import.Recipe.Title);
    }

    [Fact]
    public async Task A_title_in_the_file_wins_over_its_name()
    {
        var read = Assert.IsType<ImportStep.Read>(await Take(File("other.tab", Tab(titled: true))));

        Assert.Equal("Groups of five, rising", read.Import.Recipe.Title);
    }

    [Fact]
    public async Task What_was_guessed_stands_in_the_remarks_of_the_exercise()
    {
        var read = Assert.IsType<ImportStep.Read>(
            await Take(
                new ImportForm
                {
                    Text = "e|-0-1-3-|\nB|-------|\nG|-------|\nD|-------|\nA|-------|\nE|-------|",
                }
            )
        );
        var kept = Assert.IsType<ChangeAnswer.Kept>(await _room.Feature<ImportExercise>().Import(read, Stop));

        Assert.NotEmpty(read.Import.Remarks);
        Assert.StartsWith("Read from pasted text:\n", kept.Exercise.Notes, StringComparison.Ordinal);
        Assert.All(
            read.Import.Remarks,
            remark => Assert.Contains(remark, kept.Exercise.Notes, StringComparison.Ordinal)
        );
        Assert.False(kept.Exercise.OnShelf);
    }

    [Fact]
    public async Task Nothing_at_all_is_refused_with_what_would_be_right()
    {
        var refused = Assert.IsType<ImportStep.Refused>(await Take(new ImportForm { Text = " \n" }));

        Assert.Contains("a line pasted above, or a file", refused.Fault.Right, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_too_large_for_its_kind_is_refused_by_its_beginning()
    {
        var bytes = new byte[(4 << 20) + 1];
        "MThd"u8.CopyTo(bytes);
        await using var content = new MemoryStream(bytes);

        var refused = Assert.IsType<ImportStep.Refused>(
            await Take(new ImportForm { File = new FormFile(content, 0, bytes.Length, "File", "long.mid") })
        );

        Assert.Equal(
            "long.mid: the file is too large for MIDI: 4.1 MB; at most 4 MB",
            refused.Fault.ToString()
        );
        Assert.InRange(content.Position, 1, 1024);
    }

    [Fact]
    public async Task Pasted_text_that_is_too_long_is_refused_with_the_limit()
    {
        var refused = Assert.IsType<ImportStep.Refused>(
            await Take(new ImportForm { Text = new string('-', 5 << 20) })
        );

        Assert.Equal(
            "pasted text: the file is too large for text tab: 5 MB; at most 1 MB",
            refused.Fault.ToString()
        );
    }

    [Fact]
    public async Task A_line_that_no_hand_can_play_is_refused_with_its_place()
    {
        const string wide =
            """{ "passagework": 1, "written": [ { "place": "6:1", "duration": "1/4", "with": ["5:20"] } ] }""";

        var refused = Assert.IsType<ImportStep.Refused>(await Take(new ImportForm { Text = wide }));

        Assert.Equal("bar 1, beat 1", refused.Fault.Where);
        Assert.Contains("no hand can hold", refused.Fault.What, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_ticket_of_long_ago_asks_for_the_file_once_more()
    {
        var waiting = _room.Feature<WaitingUploads>();
        var first = waiting.Keep(new Upload("first.mid", []));
        for (var later = 0; later < 4; later++)
            waiting.Keep(new Upload("later.mid", []));

        var refused = Assert.IsType<ImportStep.Refused>(
            await Take(new ImportForm { Ticket = first, Line = 0 })
        );

        Assert.Contains("no longer at hand", refused.Fault.What, StringComparison.Ordinal);
    }

    private Task<ImportStep> Take(ImportForm form) =>
        _room.Feature<TakeUpload>().Take(form, topNotesOnly: false, Stop);

    private static ImportForm File(string name, string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        return new ImportForm { File = new FormFile(new MemoryStream(bytes), 0, bytes.Length, "File", name) };
    }

    private static string Tab(bool titled)
    {
        var recipe = Library.Find("groups-of-five-up").OrThrow().Recipe;
        var played = Measurer.Measure(recipe, Player.At(2)).OrThrow().Realization;
        return titled ? TextTab.Write(played) : TextTab.WriteBars(played, 1, 3);
    }
}
