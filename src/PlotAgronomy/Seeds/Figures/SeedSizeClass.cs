namespace PlotAgronomy.Seeds;

/// <summary>Size of a seed by the mass of one; the limits are common practice and the lower one belongs to the class.</summary>
public enum SeedSizeClass
{
    /// <summary>Less than 1 mg: white clover, timothy.</summary>
    VerySmall,

    /// <summary>From 1 to less than 5 mg: red clover, turnip.</summary>
    Small,

    /// <summary>From 5 to less than 40 mg: oats, radish.</summary>
    Medium,

    /// <summary>From 40 to less than 150 mg.</summary>
    Large,

    /// <summary>150 mg and more: peas, beans, corn.</summary>
    VeryLarge,
}
