using System.Text;
using Passagework.Exercises;
using Passagework.Instrument;
using Passagework.Rhythm;
using Passagework.Sound;
using Passagework.Studio.Features.Choosing;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Exporting;
using Passagework.Studio.Features.Settings;
using Passagework.Studio.Features.Shelf;
using Passagework.Theory;
using UglyToad.PdfPig;

namespace Passagework.Studio.Tests.Features.Settings;

public sealed class SettingsTests : IAsyncLifetime
{
    private static readonly SettingsForm Everything = new()
    {
        Room = "Boat shed",
        Teacher = "Hedda Quill",
        Theme = "Dark",
        Level = "advanced",
        Boxes = "4",
        Notes = "LettersWithH",
        Counting = "TaKa",
        PlanStart = "50",
        PlanGoal = "80",
        Technique = "Economy",
        First = "Up",
        Guitar = "Nylon",
    };

    private Room _room = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _room = await Room.Open();

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task Every_setting_of_the_form_is_read_again_as_it_was_kept()
    {
        await Keep(Everything);

        Assert.Equal(
            new StudioSettings
            {
                Room = "Boat shed",
                Teacher = "Hedda Quill",
                Theme = Theme.Dark,
                Level = 3,
                Style = new RoomStyle
                {
                    Boxes = BoxNumbering.WithRootBox(4),
                    Notes = NoteNaming.LettersWithH,
                    Counting = Counting.TaKa,
                    Plan = PlanShares.Of(50, 80).OrThrow(),
                },
                Technique = Technique.Economy,
                First = FirstStroke.Up,
                Guitar = GuitarSound.Nylon,
            },
            await _room.Feature<ReadSettings>().Read(Stop)
        );
    }

    [Fact]
    public void A_field_that_was_not_sent_changes_nothing()
    {
        var settings = Everything.Over(new StudioSettings()).OrThrow();
        Assert.Equal(settings, new SettingsForm().Over(settings).OrThrow());
    }

    [Theory]
    [InlineData("6", "70", "95", "box on the root")]
    [InlineData("1", "95", "95", "a start below the goal")]
    [InlineData("1", "20", "95", "a whole number from 30 to 100")]
    [InlineData("1", "70", "95.5", "a whole number from 30 to 100")]
    public void What_cannot_be_set_says_where_or_what_can(
        string boxes,
        string start,
        string goal,
        string said
    )
    {
        var form = new SettingsForm
        {
            Boxes = boxes,
            PlanStart = start,
            PlanGoal = goal,
        };
        Assert.False(form.Over(new StudioSettings()).TryGet(out _, out var fault));
        Assert.Contains(said, $"{fault.Where} {fault.Right}", StringComparison.Ordinal);
    }

    [Fact]
    public void A_choice_that_is_not_in_its_list_is_refused_with_its_name()
    {
        Assert.False(
            new SettingsForm { Notes = "17" }
                .Over(new StudioSettings())
                .TryGet(out _, out var fault)
        );
        Assert.Equal("names of notes", fault.Where);
    }

    [Fact]
    public async Task The_sheet_is_written_as_the_room_calls_and_counts_things()
    {
        Assert.Contains("A minor pentatonic, box 1", await Sheet(), StringComparison.Ordinal);

        await Keep(
            new SettingsForm
            {
                Boxes = "4",
                Notes = "Syllables",
                Counting = "TaKa",
                PlanStart = "50",
                PlanGoal = "80",
            }
        );

        var sheet = await Sheet();
        Assert.Contains("La minor pentatonic, box 4", sheet, StringComparison.Ordinal);
        Assert.Contains("squares are La", sheet, StringComparison.Ordinal);
        Assert.Contains("dimi", sheet.Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("38, up to 60", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Files_keep_the_fixed_words_whatever_is_set()
    {
        var before = (await Bytes("json"), await Bytes("txt"), await Bytes("musicxml"));
        await Keep(Everything);
        Assert.Equal(before, (await Bytes("json"), await Bytes("txt"), await Bytes("musicxml")));
    }

    [Fact]
    public async Task A_new_exercise_is_picked_as_the_room_picks()
    {
        await Keep(Everything);

        var begun = Assert.IsType<ChangeAnswer.Kept>(await _room.Feature<BeginExercise>().Begin(Stop));

        Assert.Equal(
            (Technique.Economy, FirstStroke.Up),
            (begun.Exercise.Recipe.Picking.Technique, begun.Exercise.Recipe.Picking.First)
        );
    }

    [Theory]
    [InlineData("beginner", "a beginner")]
    [InlineData("elementary", "an elementary player")]
    [InlineData("expert", "an expert")]
    [InlineData("2.5", "a player of level 2.5")]
    public void A_level_is_said_alike_on_every_page(string level, string words)
    {
        var player = Hands.PlayerJson.ReadLevel(level).OrThrow();
        Assert.Equal(words, LevelWords.Player(player.LevelText));
        Assert.Equal($"Which one for {words}?", QuestionWords.Title(new Asked { Level = player.Level }));
    }

    private async Task Keep(SettingsForm form) =>
        await _room.Feature<ChangeSettings>().Change(now => form.Over(now).OrThrow(), Stop);

    private async Task<string> Sheet()
    {
        using var pdf = PdfDocument.Open(Encoding.Latin1.GetBytes(await Bytes("sheet.pdf")));
        return string.Join(' ', pdf.GetPage(1).GetWords().Select(word => word.Text));
    }

    private async Task<string> Bytes(string ending)
    {
        var form = ExportForm.All.Single(one => one.Ending == ending);
        var file = await _room
            .Feature<ExportExercise>()
            .Export(new ExerciseKey("groups-of-five-up"), form, null, Stop);
        await using var bytes = new MemoryStream();
        file.OrThrow().Write(bytes);
        return Encoding.Latin1.GetString(bytes.ToArray());
    }
}
