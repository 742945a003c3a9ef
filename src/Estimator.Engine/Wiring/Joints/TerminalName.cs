namespace Estimator.Engine.Wiring.Joints;

/// <summary>Which screw or lead of a device.</summary>
/// <remarks>Colours of screws and leads: NEC 200.10, 250.126 and 404.9 for neutral and ground; the rest common practice, no source.</remarks>
public enum TerminalName
{
    /// <summary>Hot: a brass screw or a black lead; the line side of a device with ground-fault protection.</summary>
    Hot = 1,

    /// <summary>Second hot of a 240 V outlet.</summary>
    SecondHot,

    /// <summary>The half of a receptacle that a switch acts on: the other brass screw, the tab between them broken off.</summary>
    SwitchedHalf,

    /// <summary>The light of a ceiling fan: a lead of its own.</summary>
    FanLight,

    /// <summary>Feed of a single-pole switch: brass.</summary>
    SwitchFeed,

    /// <summary>What a single-pole switch turns on and off: brass.</summary>
    SwitchLeg,

    /// <summary>Common of a three-way switch: the dark screw.</summary>
    Common,

    /// <summary>First traveller: brass.</summary>
    TravellerA,

    /// <summary>Second traveller: brass.</summary>
    TravellerB,

    /// <summary>First traveller of a four-way switch's other pair: dark.</summary>
    OnwardA,

    /// <summary>Second traveller of a four-way switch's other pair: dark.</summary>
    OnwardB,

    /// <summary>Neutral: silver or white.</summary>
    Neutral,

    /// <summary>Ground: green or bare.</summary>
    Ground,

    /// <summary>Interconnect of an alarm.</summary>
    Interconnect,

    /// <summary>Hot that a ground-fault device hands on: load side, brass.</summary>
    LoadHot,

    /// <summary>Neutral that a ground-fault device hands on: load side, silver.</summary>
    LoadNeutral,
}
