using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>A weighed run: one kind through one setting of the gate over a taped course.</summary>
public sealed class SpreaderRun
{
    /// <summary>Gets the kind that was in the hopper.</summary>
    public required CropKind Kind { get; init; }

    /// <summary>Gets the setting of the gate, a pure number on the user's own scale.</summary>
    public required double Gate { get; init; }

    /// <summary>Gets the weight that left the hopper.</summary>
    public required Mass Weighed { get; init; }

    /// <summary>Gets the length of the course.</summary>
    public required Length Distance { get; init; }

    /// <summary>Gets the time of the run; null when it was not taken, and then the run tells no flow.</summary>
    public TimeSpan? Time { get; init; }

    /// <summary>The kind and the gate.</summary>
    /// <returns>Text such as <c>Cereal rye at gate 4.5</c>.</returns>
    public override string ToString() => $"{Kind.ShortName} at gate {Amounts.Print(Gate, 2)}";
}
