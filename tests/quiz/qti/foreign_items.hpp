#pragma once

#include <string>

/// Items as other programs write them; their content is made up.
namespace flapdoor::quiz::foreign {

inline std::string item_3(const std::string& inside, const std::string& attributes = "adaptive=\"false\" time-dependent=\"false\"")
{
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<qti-assessment-item xmlns=\"http://www.imsglobal.org/xsd/imsqtiasi_v3p0\" identifier=\"f-1\" title=\"Foreign\" " + attributes + ">\n" + inside + "\n</qti-assessment-item>\n";
}

inline const std::string choose_one = item_3(R"(<qti-response-declaration identifier="RESPONSE" cardinality="single" base-type="identifier"><qti-correct-response><qti-value>B</qti-value></qti-correct-response></qti-response-declaration>
<qti-outcome-declaration identifier="SCORE" cardinality="single" base-type="float"/>
<qti-item-body><p>A register is left open {see note}.</p>
<qti-choice-interaction response-identifier="RESPONSE" max-choices="1" shuffle="true"><qti-prompt>Where does the <b>dust</b> go?</qti-prompt>
<qti-simple-choice identifier="A">Nowhere<qti-feedback-inline outcome-identifier="FB" identifier="A" show-hide="show">Air carries it.</qti-feedback-inline></qti-simple-choice>
<qti-simple-choice identifier="B">To every room the duct serves</qti-simple-choice>
<qti-simple-choice identifier="C">Up</qti-simple-choice></qti-choice-interaction></qti-item-body>
<qti-response-processing template="https://purl.imsglobal.org/spec/qti/v3p0/rptemplates/match_correct.xml"/>)");

inline const std::string choose_several_2_1 = R"(<assessmentItem xmlns="http://www.imsglobal.org/xsd/imsqti_v2p1" identifier="f-2" title="Openings" adaptive="false" timeDependent="false">
<responseDeclaration identifier="R1" cardinality="multiple" baseType="identifier"><mapping defaultValue="0"><mapEntry mapKey="a" mappedValue="1"/><mapEntry mapKey="c" mappedValue="0.5"/><mapEntry mapKey="b" mappedValue="-1"/></mapping></responseDeclaration>
<outcomeDeclaration identifier="SCORE" cardinality="single" baseType="float" normalMaximum="2"/>
<itemBody><choiceInteraction responseIdentifier="R1" maxChoices="0" shuffle="false"><prompt>Which openings are closed before dusty work?</prompt>
<simpleChoice identifier="a">Supply vent</simpleChoice><simpleChoice identifier="b">Toolbox lid</simpleChoice><simpleChoice identifier="c">Return vent</simpleChoice></choiceInteraction></itemBody>
<responseProcessing template="http://www.imsglobal.org/question/qti_v2p1/rptemplates/map_response"/></assessmentItem>)";

inline const std::string order = item_3(R"(<qti-response-declaration identifier="RESPONSE" cardinality="ordered" base-type="identifier"><qti-correct-response><qti-value>v</qti-value><qti-value>w</qti-value><qti-value>i</qti-value></qti-correct-response></qti-response-declaration>
<qti-item-body><qti-order-interaction response-identifier="RESPONSE" shuffle="true"><qti-prompt>Put the cleaning in order.</qti-prompt>
<qti-simple-choice identifier="i">Inspect</qti-simple-choice><qti-simple-choice identifier="v">Vacuum</qti-simple-choice><qti-simple-choice identifier="w">Wipe</qti-simple-choice></qti-order-interaction></qti-item-body>
<qti-response-processing template="https://purl.imsglobal.org/spec/qti/v3p0/rptemplates/match_correct.xml"/>)");

inline const std::string number_2_2 = R"(<assessmentItem xmlns="http://www.imsglobal.org/xsd/imsqti_v2p2" identifier="q-0012" title="Strip width" adaptive="false" timeDependent="false" xml:lang="en">
 <responseDeclaration identifier="RESPONSE" cardinality="single" baseType="float"><correctResponse><value>1.83</value></correctResponse></responseDeclaration>
 <outcomeDeclaration identifier="SCORE" cardinality="single" baseType="float"><defaultValue><value>0</value></defaultValue></outcomeDeclaration>
 <itemBody><p>Six feet in metres: <textEntryInteraction responseIdentifier="RESPONSE" expectedLength="6"/> m</p></itemBody>
 <responseProcessing><responseCondition><responseIf>
  <equal toleranceMode="absolute" tolerance="0.01 0.01"><variable identifier="RESPONSE"/><correct identifier="RESPONSE"/></equal>
  <setOutcomeValue identifier="SCORE"><baseValue baseType="float">1</baseValue></setOutcomeValue></responseIf></responseCondition></responseProcessing>
</assessmentItem>)";

inline const std::string hotspot = item_3(R"(<qti-response-declaration identifier="RESPONSE" cardinality="single" base-type="identifier"><qti-correct-response><qti-value>door</qti-value></qti-correct-response></qti-response-declaration>
<qti-item-body><qti-hotspot-interaction response-identifier="RESPONSE" max-choices="1"><qti-prompt>Where does the door flap go?</qti-prompt>
<img src="plan1.svg" width="640" height="480" alt="Room plan, door at the lower left"/>
<qti-hotspot-choice identifier="door" shape="rect" coords="40,380,110,470"/><qti-hotspot-choice identifier="win" shape="circle" coords="500,60,40" hotspot-label="The window"/></qti-hotspot-interaction></qti-item-body>)");

}
