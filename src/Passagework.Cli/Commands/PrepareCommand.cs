using System.CommandLine;
using Passagework.Cli.Output;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Cli.Commands;

/// <summary><c>prepare PIECE</c>: its hardest moves, what covers them, the smallest set of exercises that does.</summary>
internal static class PrepareCommand
{
    public static Command Create(Terminal terminal)
    {
        var (piece, with, technique) = (PieceArgument(), WithOption(), TechniqueOption());
        var player = Arguments.PlayerOption();
        var json = Arguments.Json();
        var output = Arguments.OutputFile();
        var command = new Command("prepare", "What is hard in a piece, and which exercises prepare it.")
        {
            piece,
            with,
            technique,
            player,
            json,
            output,
        };
        command.SetAction(parsed =>
            PlayerSource
                .Find(parsed.GetValue(player) ?? "", terminal)
                .Then(who =>
                    Melody(parsed.GetValue(piece) ?? "", parsed.GetValue(technique), terminal)
                        .Then(source => Prepared(source, parsed.GetValue(with) ?? [], who, terminal))
                )
                .Then<string>(prepared =>
                    parsed.GetValue(json) ? PreparationJson.Of(prepared) : PreparationText.Of(prepared)
                )
                .Finish(terminal, parsed.GetValue(output))
        );
        return command;
    }

    private static Argument<string> PieceArgument() =>
        new("piece")
        {
            Description =
                "MusicXML, MXL, MIDI, text tab or an exercise file, a built-in piece such as corner-table, or - for standard input.",
        };

    private static Option<string[]> WithOption() =>
        new("--with")
        {
            Description = "Exercises or families to prepare it with; every family by default.",
            HelpName = "EXERCISE",
            AllowMultipleArgumentsPerToken = true,
        };

    private static Option<string?> TechniqueOption() =>
        Arguments.Text(
            "--technique",
            "Picking technique for piece and exercises; that of the piece by default.",
            "TECHNIQUE"
        );

    private static Outcome<PieceSource> Melody(string name, string? technique, Terminal terminal) =>
        PieceSource
            .Find(name, terminal)
            .Then(source => technique is null ? source : Stroked(source, technique));

    private static Outcome<PieceSource> Stroked(PieceSource source, string technique) =>
        RecipeChange.Technique(source.Line.Recipe, technique).TryGet(out var recipe, out var fault)
            ? source with
            {
                Line = source.Line with { Recipe = recipe },
            }
            : fault with
            {
                Where = "--technique",
            };

    private static Outcome<PreparedPiece> Prepared(
        PieceSource source,
        IReadOnlyCollection<string> names,
        PlayerSource who,
        Terminal terminal
    ) =>
        Piece
            .Of(source.Title, source.Line, who.Player)
            .Then(piece =>
                PreparingSource
                    .Find(names, piece, who.Player, terminal)
                    .Then(found =>
                        PieceCollection
                            .BuiltIn(who.Player, piece.Line.Recipe.Picking.Technique)
                            .Then<PreparedPiece>(music => new PreparedPiece(
                                source,
                                who,
                                found,
                                Preparation.Of(piece, found.Exercises, music)
                            ))
                    )
            );
}
