using Passagework.Tests.Architecture;

namespace Passagework.Cli.Tests;

/// <summary>
/// Forty answers that were read, sentence by sentence, and found right: they lie in <c>Golden/choose</c>. A change of words or figures
/// shows here, to be read again.
/// </summary>
public sealed class ChooseGoldenTests : IDisposable
{
    private static readonly GoldenFile Accepted = new("tests", "Passagework.Cli.Tests", "Golden", "choose");

    private readonly Session _session = new();

    public void Dispose() => _session.Dispose();

    public static TheoryData<string> Names => [.. ChooseQuestions.All.Select(question => question.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_answer_is_the_one_that_was_read(string name)
    {
        var question = ChooseQuestions.All.Single(question => question.Name == name);
        foreach (var (file, text) in ChooseQuestions.Files)
        {
            _session.Write(file, text);
        }

        string[] args =
        [
            .. question.Args.Select(arg => arg.Replace("@", _session.Folder + "/", StringComparison.Ordinal)),
        ];
        var (code, output, error) = _session.Run(["choose", .. args]);
        var said = $"choose {string.Join(' ', question.Args)}\nexit {code}\n{error}{output}".Replace(
            _session.Folder + "/",
            "@",
            StringComparison.Ordinal
        );

        Accepted.Holds(name + ".txt", said);
    }
}
