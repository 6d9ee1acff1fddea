namespace PlotAgronomy.Nutrients;

/// <content>What the credit answers.</content>
public sealed partial class LegumeCredit
{
    /// <summary>The nitrogen to subtract for a stand: the lower figure, or nothing for a legume sown together with the
    /// crop.</summary>
    /// <param name="stand">When the legume grew.</param>
    /// <returns>The credit.</returns>
    /// <exception cref="ArgumentException">A figure for a legume that grew before is asked of a standing one, or the
    /// reverse.</exception>
    public LegumeCreditAnswer For(LegumeStand stand)
    {
        Guard.Defined(stand);
        if (stand != LegumeStand.SownTogether && IsForExistingStand != (stand == LegumeStand.Existing))
        {
            string legume = IsForExistingStand ? "a legume that stands" : "a legume that grew before";
            throw new ArgumentException($"The credit '{Id}' is for {legume}.", nameof(stand));
        }

        return new LegumeCreditAnswer(this, stand);
    }
}
