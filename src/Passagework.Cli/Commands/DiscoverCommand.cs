using System.CommandLine;
using Passagework.Choosing.Discovery;
using Passagework.Cli.Output;
using Passagework.Foundation;

namespace Passagework.Cli.Commands;

/// <summary><c>discover</c>: looks at every cell of a length and shows a few unlike ones that none beats on everything.</summary>
internal sealed class DiscoverCommand
{
    private readonly Terminal _terminal;
    private readonly DiscoverySource _source;
    private readonly Option<string?> _weights = WishesSource.Option();
    private readonly Option<string?> _pieces = PiecesSource.Option();
    private readonly Option<string> _player = Arguments.PlayerOption();
    private readonly Option<bool> _json = Arguments.Json();
    private readonly Option<string?> _output = Arguments.OutputFile();

    private DiscoverCommand(Terminal terminal, Command command)
    {
        (_terminal, _source) = (terminal, new DiscoverySource(command));
        foreach (var option in new Option[] { _weights, _pieces, _player, _json, _output })
        {
            command.Options.Add(option);
        }

        command.SetAction(parsed => Run(parsed).Finish(terminal, parsed.GetValue(_output)));
    }

    public static Command Create(Terminal terminal)
    {
        var command = new Command("discover", "Find new exercises: every cell of a length is looked at.");
        _ = new DiscoverCommand(terminal, command);
        return command;
    }

    private Outcome<string> Run(ParseResult parsed) =>
        PlayerSource
            .Find(parsed.GetValue(_player) ?? "", _terminal)
            .Then(who =>
                _source
                    .Read(parsed, who.Player)
                    .Then(question => WithMusic(question, parsed))
                    .Then(question =>
                        WishesSource
                            .Find(parsed.GetValue(_weights), _terminal)
                            .Then(wishes => DiscoverySource.Wished(question, wishes))
                    )
                    .Then(question => Search(question, who, parsed))
            );

    private Outcome<DiscoveryQuestion> WithMusic(DiscoveryQuestion question, ParseResult parsed) =>
        MusicSource
            .Find(parsed.GetValue(_pieces), _terminal, question.Player, question.Space.Picking.Technique)
            .Then<DiscoveryQuestion>(music =>
                question with
                {
                    Music = music.Pieces,
                    Anchors = music.Anchors,
                }
            );

    private Outcome<string> Search(DiscoveryQuestion question, PlayerSource who, ParseResult parsed)
    {
        using var watch = new SearchWatch(Console.IsErrorRedirected ? null : _terminal.Error);
        return Discoverer
            .Find(question, watch, watch.Stopped)
            .Then<string>(result =>
                parsed.GetValue(_json)
                    ? JsonPage.Print(DiscoveryJson.Of(result, question.Anchors, who.Name, watch.Seconds))
                    : DiscoveryText.Of(question, result, who.Name, watch.Seconds)
            );
    }
}
