namespace PlotAgronomy.Record.Sums;

/// <summary>Texts of invented seed tags.</summary>
internal static class TagTexts
{
    internal static readonly (string Words, string Text)[] All =
    [
        ("one coated kind", """
            Kind: Crimson clover   Variety: not stated
            PURE SEED: 65.00%
            COATING MATERIAL: 33.50%
            INERT MATTER: 34.20%
            OTHER CROP SEED: 0.50%
            WEED SEED: 0.30%
            NOXIOUS WEED SEED: NONE FOUND
            GERMINATION: 75%   HARD SEED: 10%
            Test date: 03/2025
            Origin: OR
            LOT NO. CC-1187
            NET WT. 50 LBS (22.68 KG)
            """),
        ("five kinds", """
            PURE SEED  KIND            VARIETY  GERM  HARD  ORIGIN
            46.20%     Winter oats     VNS      90%
            29.40%     Winter wheat    VNS      90%
            14.70%     Winter pea      VNS      85%
            4.90%      Crimson clover  VNS      75%   15%
            1.96%      Purple top turnip VNS    90%
            1.50%  OTHER CROP SEED
            1.20%  INERT MATTER
            0.14%  WEED SEED
            TESTED: JUNE 2025    NET WEIGHT 50 LB
            """),
        ("columns in another order", """
            GERM   HARD   PURE SEED   KIND
            85%    5%     49.00%      Ladino clover
            80%    10%    49.00%      Alsike clover
            Inert 2.00%
            """),
        ("a part missing", """
            Kind: Medium red clover
            PURE SEED: 60.00%
            INERT MATTER: 35.00%
            GERMINATION: 90%
            """),
        ("a noxious weed and treated seed", """
            Kind: Austrian winter pea
            PURE SEED: 98.50%
            INERT MATTER: 1.30%
            WEED SEED: 0.20%
            NOXIOUS: 36 dock per lb
            GERMINATION: 88%
            TREATED SEED - DO NOT USE FOR FOOD
            TEST DATE 1/24
            """),
        ("nothing", "a page of something else"),
    ];
}
