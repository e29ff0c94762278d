using System.CommandLine;
using Passagework.Choosing;
using Passagework.Choosing.Explaining;
using Passagework.Cli.Output;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Repertoire;

namespace Passagework.Cli.Commands;

/// <summary><c>choose [EX...]</c>: ranks exercises under the teacher's own criteria and says why one wins.</summary>
internal sealed class ChooseCommand
{
    private const int ToldOfAll = 3;
    private readonly Terminal _terminal;
    private readonly Argument<string[]> _exercises = new("exercises")
    {
        Description = "Families or ids of the shelf, or exercise files; every family when none is named.",
        Arity = ArgumentArity.ZeroOrMore,
    };

    private readonly Option<string?> _weights = WishesSource.Option();

    private readonly Option<string[]> _why = new("--why")
    {
        Description = "Two of the exercises: why the first and not the second.",
        HelpName = "EXERCISE EXERCISE",
        Arity = new ArgumentArity(2, 2),
        AllowMultipleArgumentsPerToken = true,
    };

    private readonly Option<string?> _method = Arguments.Text(
        "--method",
        "Another way to rank, to see whether it agrees: "
            + string.Join(", ", RankingMethods.All.Select(method => method.Id))
            + ".",
        "METHOD"
    );

    private readonly Option<string?> _pieces = PiecesSource.Option();
    private readonly Option<string> _player = Arguments.PlayerOption();
    private readonly Option<bool> _json = Arguments.Json();
    private readonly Option<string?> _output = Arguments.OutputFile();
    private readonly Overrides _overrides;

    private ChooseCommand(Terminal terminal, Command command)
    {
        _terminal = terminal;
        command.Arguments.Add(_exercises);
        foreach (var option in new Option[] { _weights, _pieces, _why, _method, _player, _json, _output })
        {
            command.Options.Add(option);
        }

        _overrides = new Overrides(command);
        command.SetAction(parsed => Run(parsed).Finish(terminal, parsed.GetValue(_output)));
    }

    public static Command Create(Terminal terminal)
    {
        var command = new Command("choose", "Which exercise is most worth a player's time, and why.");
        _ = new ChooseCommand(terminal, command);
        return command;
    }

    private Outcome<string> Run(ParseResult parsed) =>
        PlayerSource
            .Find(parsed.GetValue(_player) ?? "", _terminal)
            .Then(who =>
                Question(parsed, who)
                    .Then(Chooser.Choose)
                    .Then(answer =>
                        WhyOf(answer, parsed).Then<string>(why => Print(answer, who, why, parsed))
                    )
            );

    private Outcome<ChoiceQuestion> Question(ParseResult parsed, PlayerSource who) =>
        CandidateSources
            .Find(parsed.GetValue(_exercises) ?? [], _terminal, _overrides, parsed)
            .Then(candidates =>
                WishesSource
                    .Find(parsed.GetValue(_weights), _terminal)
                    .Then(wishes =>
                        MethodOf(parsed.GetValue(_method))
                            .Then(method =>
                                MusicSource
                                    .Find(
                                        parsed.GetValue(_pieces),
                                        _terminal,
                                        who.Player,
                                        candidates[0].Forms[0].Picking.Technique
                                    )
                                    .Then<ChoiceQuestion>(music => new ChoiceQuestion
                                    {
                                        Player = who.Player,
                                        Candidates = candidates,
                                        Pieces = music.Pieces,
                                        Anchors = music.Anchors,
                                        Wishes = wishes,
                                        Method = method,
                                        LeavesOutUnfit = (parsed.GetValue(_exercises) ?? []).Length == 0,
                                    })
                            )
                    )
            );

    private static Outcome<IRankingMethod> MethodOf(string? id)
    {
        var known = RankingMethods.All;
        var found = id is null ? known[0] : known.FirstOrDefault(method => method.Id == id);
        return found is null
            ? new Fault(
                $"unknown method {Quote.Short(id ?? "")}",
                "--method",
                NearestWord.Hint(id ?? "", [.. known.Select(method => method.Id)])
            )
            : new Outcome<IRankingMethod>.Done(found);
    }

    private Outcome<Comparison?> WhyOf(ChoiceAnswer answer, ParseResult parsed)
    {
        if (parsed.GetValue(_why) is not { Length: 2 } names)
        {
            return (Comparison?)null;
        }

        var ids = answer.Candidates.Select(candidate => candidate.Source.Id).ToList();
        foreach (var name in names)
        {
            if (!ids.Contains(name))
            {
                return new Fault(
                    $"{Quote.Short(name)} is not among the exercises compared",
                    "--why",
                    NearestWord.Hint(name, ids)
                );
            }
        }

        return names[0] == names[1]
            ? new Fault($"{Quote.Short(names[0])} is named twice", "--why", "two different exercises")
            : Comparison.Of(answer, ids.IndexOf(names[0]), ids.IndexOf(names[1]));
    }

    private string Print(ChoiceAnswer answer, PlayerSource who, Comparison? why, ParseResult parsed)
    {
        if (parsed.GetValue(_json))
        {
            return JsonPage.Print(ChoiceJson.Of(answer, who.Name, why));
        }

        var named = (parsed.GetValue(_exercises) ?? []).Length > 0;
        return ChoiceText.Of(answer, who.Name, named ? answer.Candidates.Length : ToldOfAll, why);
    }
}
