using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.Json;

namespace Passagework.Studio.Tests.Browsing;

/// <summary>What left a page's audio graph, sample by sample, and what was meant to.</summary>
internal sealed class Tape
{
    // Records at the door of the loudspeaker, on the browser's audio thread.
    private const string Recorder = """
        registerProcessor("tape", class extends AudioWorkletProcessor {
          process([input]) {
            this.port.postMessage({ frame: currentFrame, samples: input[0] ? input[0].slice() : new Float32Array(128) });
            return true;
          }
        });
        """;

    private const string Installing = """
        window.tape = [];
        const recorder = URL.createObjectURL(new Blob([RECORDER], { type: "text/javascript" }));
        const connect = AudioNode.prototype.connect;
        AudioNode.prototype.connect = function (to, ...rest) {
          if (to instanceof AudioDestinationNode) {
            const { context } = this;
            (window.taping ??= context.audioWorklet.addModule(recorder)).then(() => {
              const tap = new AudioWorkletNode(context, "tape", { numberOfInputs: 1, numberOfOutputs: 1, channelCount: 1, channelCountMode: "explicit" });
              tap.port.onmessage = ({ data }) => window.tape.push(data);
              connect.call(this, tap);
              connect.call(tap, context.destination);
            });
          }
          return connect.call(this, to, ...rest);
        };
        """;

    private const string Reading = """
        () => {
          // The audio thread changes hands when the recorder begins: the first block stands alone.
          const blocks = window.tape.slice(1);
          const bytes = new Uint8Array(blocks.length * 512);
          blocks.forEach((block, i) => bytes.set(new Uint8Array(block.samples.buffer), i * 512));
          let text = "";
          for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192));
          return { first: blocks[0].frame, last: blocks.at(-1).frame, base64: btoa(text), log: passageworkPlay.log };
        }
        """;

    private Tape(long first, float[] samples, IReadOnlyList<Given> log) =>
        (First, Samples, Log) = (first, samples, log);

    /// <summary>Frame of the audio clock of the first sample.</summary>
    public long First { get; }

    /// <summary>Everything that left the graph.</summary>
    public float[] Samples { get; }

    /// <summary>What was given to the browser, pieces and joins, in that order.</summary>
    public IReadOnlyList<Given> Log { get; }

    /// <summary>Makes a page record; before it is opened.</summary>
    public static async Task Install(Desk desk)
    {
        // The recorder is no file of the studio, so its pages would not let it in.
        var browser = await desk.Page.Context.NewCDPSessionAsync(desk.Page);
        await browser.SendAsync("Page.setBypassCSP", new() { ["enabled"] = true });
        await desk.Page.AddInitScriptAsync(
            Installing.Replace("RECORDER", JsonSerializer.Serialize(Recorder), StringComparison.Ordinal)
        );
    }

    /// <summary>What was recorded so far.</summary>
    public static async Task<Tape> Read(Desk desk)
    {
        var read = await desk.Page.EvaluateAsync<JsonElement>(Reading);
        var bytes = Convert.FromBase64String(read.GetProperty("base64").GetString()!);
        var samples = MemoryMarshal.Cast<byte, float>(bytes).ToArray();
        var (first, last) = (read.GetProperty("first").GetInt64(), read.GetProperty("last").GetInt64());
        Assert.Equal(last - first + 128, samples.Length);
        return new Tape(first, samples, [.. read.GetProperty("log").EnumerateArray().Select(Given.Of)]);
    }

    /// <summary>What was given to the browser so far, recorded or not.</summary>
    public static async Task<IReadOnlyList<Given>> ReadLog(Desk desk) =>
        [
            .. (await desk.Page.EvaluateAsync<JsonElement>("() => passageworkPlay.log"))
                .EnumerateArray()
                .Select(Given.Of),
        ];

    /// <summary>The sample at a frame of the audio clock.</summary>
    public float At(long frame) => Samples[(int)(frame - First)];

    /// <summary>Longest run of exact silence between two frames, in samples.</summary>
    public int LongestSilence(long from, long to)
    {
        var (longest, run) = (0, 0);
        for (var frame = from; frame < to; frame++)
        {
            run = At(frame) == 0 ? run + 1 : 0;
            longest = Math.Max(longest, run);
        }

        return longest;
    }

    /// <summary>Steepest step from one sample to the next between two frames.</summary>
    public float Steepest(long from, long to)
    {
        var steepest = 0f;
        for (var frame = from; frame < to; frame++)
        {
            steepest = Math.Max(steepest, Math.Abs(At(frame + 1) - At(frame)));
        }

        return steepest;
    }
}

/// <summary>Samples that were given to the browser, or a join where <see cref="From"/> is <see cref="To"/>.</summary>
/// <param name="Sound">Name of the sound.</param>
/// <param name="Frame">Where they are heard on the audio clock.</param>
/// <param name="From">The first sample.</param>
/// <param name="To">The sample after the last.</param>
/// <param name="IsLate">Whether they came too late.</param>
internal sealed record Given(string Sound, long Frame, long From, long To, bool IsLate)
{
    /// <summary>Whether another sound takes over here.</summary>
    public bool IsJoin => From == To;

    /// <summary>Reads one.</summary>
    public static Given Of(JsonElement one)
    {
        var joins = one.TryGetProperty("joinsAt", out var at);
        return new Given(
            one.GetProperty("soundId").GetString()!,
            one.GetProperty("frame").GetInt64(),
            joins ? at.GetInt64() : one.GetProperty("sampleFrom").GetInt64(),
            joins ? at.GetInt64() : one.GetProperty("sampleTo").GetInt64(),
            !joins && one.GetProperty("isLate").GetBoolean()
        );
    }

    /// <inheritdoc/>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Sound[..4]} at {Frame}: {From} to {To}");
}
