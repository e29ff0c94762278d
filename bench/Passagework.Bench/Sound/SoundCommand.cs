namespace Passagework.Bench.Sound;

/// <summary>Looks at the string model: pictures of every technique, or its figures beside a public sound bank's.</summary>
internal static class SoundCommand
{
    private const string Usage =
        "sound draw FOLDER: a spectrogram and a WAV file of every technique in every sound\n"
        + "sound bank BANK.sf2: ten notes beside the same notes of a sound bank (needs fluidsynth)";

    /// <summary>Runs <c>draw FOLDER</c> or <c>bank FILE</c>.</summary>
    public static int Run(string[] words)
    {
        switch (words)
        {
            case ["draw", var folder]:
                TechniquePictures.Write(folder);
                return 0;
            case ["bank", var bank]:
                BankComparison.Print(bank);
                return 0;
            default:
                Console.Error.WriteLine(Usage);
                return 2;
        }
    }
}
