using System.ComponentModel;
using System.Diagnostics;

namespace Passagework.Studio.Hosting;

/// <summary>Opens a page in the user's browser.</summary>
internal static class BrowserOpener
{
    /// <summary>Asks the system to open it; where there is no browser the printed address has to do.</summary>
    public static void Open(string address)
    {
        try
        {
            using var opener = Process.Start(Command(address));
        }
        catch (Exception wrong) when (wrong is Win32Exception or InvalidOperationException)
        {
            // No desktop: the address was printed.
        }
    }

    private static ProcessStartInfo Command(string address) =>
        OperatingSystem.IsWindows()
            ? new ProcessStartInfo(address) { UseShellExecute = true }
            : new ProcessStartInfo(OperatingSystem.IsMacOS() ? "open" : "xdg-open", [address])
            {
                UseShellExecute = false,
                RedirectStandardError = true,
                RedirectStandardOutput = true,
            };
}
