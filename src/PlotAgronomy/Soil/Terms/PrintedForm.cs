namespace PlotAgronomy.Soil;

/// <summary>Whether a number stands for the element or for its oxide. P is not P2O5, and K is not K2O.</summary>
public enum PrintedForm
{
    /// <summary>The element: P, K, Mg.</summary>
    Element,

    /// <summary>The oxide: P2O5, K2O, MgO.</summary>
    Oxide,
}
