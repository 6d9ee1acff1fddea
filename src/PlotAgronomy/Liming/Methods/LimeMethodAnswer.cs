namespace PlotAgronomy.Liming;

/// <summary>One method's answer in a comparison, as it stands and on the common basis.</summary>
public sealed class LimeMethodAnswer
{
    /// <summary>Gets the method's own answer with its own labels.</summary>
    public required LimeNeed Need { get; init; }

    /// <summary>Gets the method.</summary>
    public LimeMethod Method => Need.Method;

    /// <summary>Gets the method's target closest to the one asked for.</summary>
    public double TargetPh => Need.TargetPh;

    /// <summary>Gets the rate of the common material for the common depth; null when there is none (the need's findings or
    /// <see cref="WhyNot"/> say why).</summary>
    public ApplicationRate? Common { get; init; }

    /// <summary>Gets the same for a reading higher by the reading error, or null.</summary>
    public ApplicationRate? CommonLowest { get; init; }

    /// <summary>Gets the same for a reading lower by the reading error, or null.</summary>
    public ApplicationRate? CommonHighest { get; init; }

    /// <summary>Gets why the method's rate cannot be put on the common basis, or null.</summary>
    public string? WhyNot { get; init; }
}
