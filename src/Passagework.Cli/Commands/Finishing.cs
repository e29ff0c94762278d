using Passagework.Foundation;

namespace Passagework.Cli.Commands;

/// <summary>The end of every command: print or write the answer, or say why there is none.</summary>
internal static class Finishing
{
    public static int Finish(this Outcome<string> answer, Terminal terminal, string? file) =>
        answer.Then<Answer>(text => Answer.Of(text)).Finish(terminal, file);

    public static int Finish(this Outcome<Answer> answer, Terminal terminal, string? file)
    {
        if (!answer.TryGet(out var given, out var fault))
        {
            return App.Refuse(terminal, fault);
        }

        given.Write(file, terminal);
        return App.Done;
    }
}
