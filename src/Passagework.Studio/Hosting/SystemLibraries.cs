using System.Runtime.InteropServices;
using Passagework.Foundation;

namespace Passagework.Studio.Hosting;

/// <summary>What the system has to have beside the program.</summary>
internal static class SystemLibraries
{
    // The runtime ends at once, without a word to the user, where it finds none of these.
    private static readonly string[] OpenSsl = ["libssl.so.3", "libssl.so.1.1", "libssl.so"];

    /// <summary>What is missing; null when all is there.</summary>
    public static Fault? Missing() => OperatingSystem.IsLinux() ? Missing(OpenSsl) : null;

    /// <summary>The fault where not one of the names can be loaded.</summary>
    internal static Fault? Missing(IEnumerable<string> names) =>
        names.Any(name => NativeLibrary.TryLoad(name, out _))
            ? null
            : new Fault(
                "the system has no OpenSSL, without which the studio cannot run",
                "libssl",
                "install it with the system's own packages; on Debian: apt install openssl"
            );
}
