using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>One measured gate setting and the flow it gave.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class GatePoint
{
    private GatePoint(double setting, double poundsPerMinute)
    {
        Setting = setting;
        PoundsPerMinute = poundsPerMinute;
    }

    /// <summary>Gets the setting, a pure number on the user's own scale.</summary>
    public double Setting { get; }

    /// <summary>Gets the flow.</summary>
    internal MassFlow Flow => MassFlow.FromPoundsPerMinute(PoundsPerMinute);

    internal double PoundsPerMinute { get; }

    /// <summary>Creates a point.</summary>
    /// <param name="setting">Setting on the user's own scale; a finite pure number.</param>
    /// <param name="flow">Measured flow; at least 0.</param>
    /// <returns>The point.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static GatePoint FromFlow(double setting, MassFlow flow)
    {
        double poundsPerMinute = flow.PoundsPerMinute;
        return new GatePoint(
            Guard.Finite(setting, "a setting of the scale"),
            Guard.AtLeast(poundsPerMinute, 0, "lb/min", nameof(flow))
        );
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Setting, 2)}: {Amounts.Print(PoundsPerMinute, 3)} lb/min";
}
