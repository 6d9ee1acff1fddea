namespace PlotAgronomy.Reference;

/// <summary>Atomic masses, and the oxide factors that follow from them.</summary>
internal static class AtomicMasses
{
    private static readonly ConstantTable Masses = new("Reference/Data/atomic-masses.csv");

    internal static Origin Origin => Masses.Find("H").Origin;

    /// <summary>Pounds of P2O5 in which one pound of P is bound: 2.2913.</summary>
    internal static double PhosphatePerPhosphorus => (2 * Of("P") + 5 * Of("O")) / (2 * Of("P"));

    /// <summary>Pounds of K2O in which one pound of K is bound: 1.2046.</summary>
    internal static double PotashPerPotassium => (2 * Of("K") + Of("O")) / (2 * Of("K"));

    /// <summary>Pounds of MgO in which one pound of Mg is bound: 1.6583.</summary>
    internal static double MagnesiaPerMagnesium => (Of("Mg") + Of("O")) / Of("Mg");

    /// <summary>Pounds of CaO in which one pound of Ca is bound: 1.3992.</summary>
    internal static double QuicklimePerCalcium => (Of("Ca") + Of("O")) / Of("Ca");

    /// <summary>Atomic mass in g/mol.</summary>
    internal static double Of(string symbol) => Masses[symbol];
}
