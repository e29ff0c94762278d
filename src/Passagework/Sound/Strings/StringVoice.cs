using Passagework.Theory;

namespace Passagework.Sound.Strings;

/// <summary>One string in time: its strokes, its waveguide, and the second swing that the other strings drive too.</summary>
/// <remarks>
/// The way across is a loop of its own, a little out of tune and slower to die, driven by a part of each stroke and by
/// what the other strings pressed on the bridge one block earlier; nothing leads back from it, so leakage can never
/// grow (Karjalainen, Välimäki &amp; Tolonen 1998).
/// </remarks>
internal sealed class StringVoice
{
    /// <summary>Samples made at once, from multiples of this number.</summary>
    public const int Block = 256;

    private const int Step = 32;
    private const double SlurSeconds = 0.0015;
    private const double ChokeSeconds = 0.006;
    private const double AcrossCents = 0.4;
    private const double AcrossPass = 0.7;
    private const double FadedAfter = 5.0 / 3;
    private const float Silence = 2e-6f;

    private readonly Voicing _voicing;
    private readonly double _open;
    private readonly (ulong Seed, int SampleRate) _noise;
    private readonly double _pickupDelay;
    private readonly PitchPath _path;
    private readonly (DelayLoop Main, DelayLoop Across) _loops;
    private readonly float[] _drive = new float[Block];
    private readonly float[] _acrossDrive = new float[Block];
    private readonly float[] _made = new float[Block];
    private readonly float[] _madeAcross = new float[Block];
    private readonly float[] _bridge = new float[Block];
    private (LoopTaps Main, LoopTaps Across) _now = (new(), new());
    private (LoopTaps Main, LoopTaps Across) _next = (new(), new());
    private (double Start, double Length) _glide;
    private Stroke? _stroke;
    private Pulse _pulse;
    private double _across;
    private double _fadeRate;
    private bool _released;
    private int _index;

    /// <summary>A string with its part.</summary>
    public StringVoice(StringPart part, Voicing voicing, double open, (ulong Seed, int SampleRate) noise)
    {
        Part = part;
        _voicing = voicing;
        _open = open;
        _noise = noise;
        _path = new(noise.SampleRate);
        _pickupDelay = voicing.Pickup * noise.SampleRate / EqualTemperament.FrequencyOf(open).Value;
        var history = (noise.SampleRate / 25) + 64;
        _loops = (new(history), new(history));
    }

    private double Choke => ChokeSeconds * _noise.SampleRate;

    /// <summary>What the string pressed on the bridge in the last block.</summary>
    public ReadOnlySpan<float> Bridge => _bridge;

    /// <summary>The string's strokes.</summary>
    public StringPart Part { get; }

    /// <summary>Silence, with the first stroke from that sample on to come.</summary>
    public void Reset(long sample)
    {
        Still();
        _index = Part.FirstFrom(sample);
        Array.Clear(_bridge);
    }

    /// <summary>The next block: adds what the pickup or the bridge hears, and the noise past the string.</summary>
    /// <returns>Whether the string sounded.</returns>
    public bool Render(long first, ReadOnlySpan<float> bridge, Span<float> heard, Span<float> direct)
    {
        var end = first + Block;
        if (_stroke is null && !StartsBefore(end))
        {
            _bridge.AsSpan().Clear();
            return false;
        }

        Drive(bridge);
        for (var sample = first; sample < end; )
        {
            while (StartsBefore(sample + 1))
            {
                Begin(Part.Strokes[_index++]);
            }

            var stop = StartsBefore(end) ? Part.Strokes[_index].First : end;
            if (_stroke is null)
            {
                _bridge.AsSpan((int)(sample - first), (int)(stop - sample)).Clear();
            }
            else
            {
                Play(_stroke, sample, (first, stop), heard, direct);
            }

            sample = stop;
        }

        SleepWhenSilent(end);
        return true;
    }

    private bool StartsBefore(long sample) =>
        _index < Part.Strokes.Length && Part.Strokes[_index].First < sample;

    private void Drive(ReadOnlySpan<float> bridge)
    {
        _drive.AsSpan().Clear();
        var leak = (float)_voicing.Leak;
        _acrossDrive.AsSpan().Clear();
        Samples.Add(bridge, _acrossDrive, leak);
        Samples.Add(_bridge, _acrossDrive, -leak);
    }

    private void Begin(Stroke stroke)
    {
        var sounding = _stroke is not null && !stroke.Fresh;
        if (!sounding)
        {
            Still();
        }

        _stroke = stroke;
        _released = false;
        _across = stroke.Contact.Across;
        Tune(_next, _path.KeyAt(stroke, stroke.Start));
        _pulse = PulseMaker.Of(stroke, _voicing, _open, _next.Main.Period, _noise);
        if (sounding)
        {
            _glide = (stroke.First, SlurSeconds * _noise.SampleRate);
        }
        else
        {
            Arrive();
        }
    }

    private void Play(
        Stroke stroke,
        long sample,
        (long First, long Stop) span,
        Span<float> heard,
        Span<float> direct
    )
    {
        var offset = (int)(sample - span.First);
        var count = (int)(span.Stop - sample);
        _pulse.AddTo(_drive.AsSpan(offset, count), direct.Slice(offset, count), sample);
        if (sample < _pulse.End)
        {
            Samples.Add(_drive.AsSpan(offset, count), _acrossDrive.AsSpan(offset, count), (float)_across);
        }

        while (sample < span.Stop)
        {
            if (!_released && sample >= stroke.Release)
            {
                _released = true;
                Turn(stroke, sample, Step);
                _fadeRate = FadeRate(stroke);
            }

            var piece = PieceEnd(stroke, sample, span.Stop);
            var (from, length) = ((int)(sample - span.First), (int)(piece - sample));
            Make(sample, from, length);
            Hear(stroke, sample, (from, length), heard.Slice(from, length));
            sample = piece;
        }
    }

    // A piece has one filter, or one glide from filter to filter.
    private long PieceEnd(Stroke stroke, long sample, long stop)
    {
        if (_glide.Length > 0 && sample >= _glide.Start + _glide.Length)
        {
            Arrive();
        }

        var moves = _path.MovesFrom(stroke);
        if (_glide.Length == 0 && sample >= moves)
        {
            Turn(stroke, sample, Step);
        }

        var end = _glide.Length > 0 ? Math.Ceiling(_glide.Start + _glide.Length) : double.PositiveInfinity;
        if (!_released)
        {
            end = Math.Min(end, Math.Ceiling(stroke.Release));
        }

        if (moves > sample)
        {
            end = Math.Min(end, Math.Ceiling(moves));
        }

        return (long)Math.Min(end, stop);
    }

    private void Turn(Stroke stroke, long sample, int length)
    {
        if (_glide.Length > 0)
        {
            Arrive();
        }

        Tune(_next, _path.KeyAt(stroke, sample + length));
        _glide = (sample, length);
    }

    private void Arrive()
    {
        (_now, _next) = (_next, _now);
        _glide = default;
    }

    private void Tune((LoopTaps Main, LoopTaps Across) taps, double key)
    {
        var law = _voicing.LossOf(_open, key);
        if (_stroke is { } stroke)
        {
            law = stroke.Event.PalmMuted ? law.Damped(Voicing.Palm) : law;
            law = stroke.Event.Action is StringAction.Dead or StringAction.Rake
                ? law.Damped(Voicing.Muted)
                : law;
            law = _released ? law.Damped(Voicing.Flesh) : law;
        }

        var hertz = EqualTemperament.FrequencyOf(key).Value;
        taps.Main.Tune(hertz, law, _noise.SampleRate);
        var across = hertz * Math.Exp(AcrossCents * Math.Log(2) / 1200);
        taps.Across.Tune(across, law with { Pass = law.Pass * AcrossPass }, _noise.SampleRate);
    }

    private void Make(long sample, int from, int length)
    {
        var main = _made.AsSpan(from, length);
        var across = _madeAcross.AsSpan(from, length);
        if (_glide.Length > 0)
        {
            var mix = ((sample - _glide.Start) / _glide.Length, 1 / _glide.Length);
            _loops.Main.Glide((_now.Main, _next.Main), mix, _drive.AsSpan(from, length), main);
            _loops.Across.Glide((_now.Across, _next.Across), mix, _acrossDrive.AsSpan(from, length), across);
        }
        else
        {
            _loops.Main.Run(_now.Main, _drive.AsSpan(from, length), main);
            _loops.Across.Run(_now.Across, _acrossDrive.AsSpan(from, length), across);
        }
    }

    // What the first swing presses on the bridge, and what pickup or bridge hear of both; faded where the string is
    // let go or about to be struck.
    private void Hear(Stroke stroke, long sample, (int From, int Length) piece, Span<float> heard)
    {
        var main = _made.AsSpan(piece.From, piece.Length);
        var across = _madeAcross.AsSpan(piece.From, piece.Length);
        var bridge = _bridge.AsSpan(piece.From, piece.Length);
        main.CopyTo(bridge);
        if (_pickupDelay > 0)
        {
            _loops.Main.SubtractPast(_pickupDelay, main);
            _loops.Across.SubtractPast(_pickupDelay, across);
        }

        Samples.Add(across, main);

        if (_released)
        {
            Fade(stroke, sample, main, bridge);
        }

        if (sample + piece.Length > stroke.Cut - Choke)
        {
            Still(stroke, sample, main, bridge);
        }

        Samples.Add(main, heard);
    }

    private void Fade(Stroke stroke, long sample, Span<float> main, Span<float> bridge)
    {
        var fade = Math.Exp(-_fadeRate * (sample - stroke.Release));
        var step = Math.Exp(-_fadeRate);
        for (var i = 0; i < main.Length; i++)
        {
            main[i] *= (float)fade;
            bridge[i] *= (float)fade;
            fade *= step;
        }
    }

    // The plectrum comes to rest on the string just before it strikes it anew.
    private void Still(Stroke stroke, long sample, Span<float> main, Span<float> bridge)
    {
        for (var i = 0; i < main.Length; i++)
        {
            var left = Math.Clamp((stroke.Cut - sample - i) / Choke, 0, 1);
            var fade = (float)(0.5 - (0.5 * Math.Cos(Math.PI * left)));
            main[i] *= fade;
            bridge[i] *= fade;
        }
    }

    // The fundamental falls by 60 dB in the release's time: the string's own loss does a part of it.
    private double FadeRate(Stroke stroke)
    {
        var period = _next.Main.Period;
        var own = -Math.Log(_next.Main.GainAt(Math.Tau / period)) / period;
        return Math.Max(0, (Math.Log(1000) / stroke.Fade) - own);
    }

    private void SleepWhenSilent(long end)
    {
        if (_stroke is not { } stroke || end < _pulse.End || _pulse.End < 0)
        {
            return;
        }

        var faded = _released && end > stroke.Release + (stroke.Fade * FadedAfter);
        if (faded || (!IsFree(stroke) && IsSilent()))
        {
            Still();
        }
    }

    // A string only held free to sound along must stay awake for what the others do.
    private bool IsFree(Stroke stroke) => stroke.Event.Strength <= 0 && !_released;

    // What is heard may rest within a period; the string's own last period tells.
    private bool IsSilent() =>
        Samples.Peak(_made) < Silence
        && Samples.Peak(_loops.Main.Last(_now.Main.Period)) < Silence
        && Samples.Peak(_loops.Across.Last(_now.Across.Period)) < Silence;

    private void Still()
    {
        _loops.Main.Clear();
        _loops.Across.Clear();
        _glide = default;
        _stroke = null;
    }
}
