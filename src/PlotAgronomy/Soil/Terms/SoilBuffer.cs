namespace PlotAgronomy;

/// <summary>The buffer solution a laboratory mixed with the soil to find its reserve acidity.</summary>
public enum SoilBuffer
{
    /// <summary>Shoemaker-McLean-Pratt; starts at pH 7.5.</summary>
    Smp,

    /// <summary>Sikora, paired with a water pH; made to read like SMP; starts at pH 7.5.</summary>
    Sikora,

    /// <summary>Sikora-2, paired with a potassium chloride pH; starts at pH 7.5.</summary>
    Sikora2,

    /// <summary>Mehlich, with barium chloride; starts at pH 6.6.</summary>
    Mehlich,

    /// <summary>Modified Mehlich, with calcium chloride; starts at pH 6.6.</summary>
    ModifiedMehlich,

    /// <summary>Adams-Evans; starts at pH 8.0.</summary>
    AdamsEvans,

    /// <summary>Modified Adams-Evans; starts at pH 8.0.</summary>
    ModifiedAdamsEvans,

    /// <summary>Moore-Sikora, made to read like Adams-Evans; starts at pH 8.0.</summary>
    MooreSikora,

    /// <summary>Woodruff of 1948; starts at pH 7.0.</summary>
    Woodruff,

    /// <summary>New (modified) Woodruff of Missouri; starts at pH 7.0.</summary>
    NewWoodruff,
}
